package lanewarden.kiosk;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.util.Duration;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.form.Answers;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.StuckPanel;
import lanewarden.station.Station;
import lanewarden.station.Trouble;

/**
 * The way out of the full screen: it takes the passphrase of an official or of the organizer. Where
 * a fault keeps the passphrase from being proved, the way out is open: nobody is trapped.
 */
final class WayOut {

  /** How long the station may take to answer, opening a key included. */
  private static final Duration PATIENCE = Duration.seconds(15);

  private final Desk desk;
  private final OrganizersKey key;
  private final Shell shell;
  private final Texts texts;
  private final SecureRandom random;

  WayOut(Desk desk, OrganizersKey key, Shell shell, Texts texts, SecureRandom random) {
    this.desk = desk;
    this.key = key;
    this.shell = shell;
    this.texts = texts;
    this.random = random;
  }

  /** Asks who goes, and lets them; nothing that somebody is filling in is put away for it. */
  void ask(Runnable go) {
    if (shell.hasPanel() && !shell.isPassable()) {
      return;
    }
    Answer answer = new Answer(go);
    desk.ask(
        Station::officials,
        officials -> answer.take(() -> open(officials, go)),
        trouble -> answer.take(() -> free(trouble, go)));
  }

  private void open(List<String> names, Runnable go) {
    List<String> who = new ArrayList<>(names);
    who.add(texts.of("out.organizer"));
    List<Question> questions = new ArrayList<>();
    questions.add(Question.choice("who", texts.of("out.who"), who));
    questions.addAll(key.placeIfOrganizers(texts));
    questions.add(Question.secret("passphrase", texts.of("sign-in.passphrase")));
    FormViewModel model =
        key.form(
            questions,
            (answers, place, done, missed) -> prove(names, answers, place, go, done, missed),
            () -> {
              shell.close();
              go.run();
            });
    shell.open(
        new FormPanel(
            "way-out-panel",
            model,
            new FormPanel.Wording(
                texts.of("out.title"), texts.of("out.words"), texts.of("out.act")),
            texts,
            shell::close));
  }

  private void prove(
      List<String> names,
      Answers answers,
      Optional<Path> place,
      Runnable go,
      Runnable done,
      Consumer<Trouble> missed) {
    int chosen = answers.choice("who");
    boolean organizer = chosen >= names.size();
    char[] passphrase = answers.secret("passphrase");
    Answer answer = new Answer(go);
    desk.act(
        station -> {
          if (organizer) {
            station.keyOffice(random).organizer(place, passphrase);
          } else {
            station.proceedings().vouch(names.get(chosen), passphrase);
          }
        },
        () -> answer.take(done),
        trouble ->
            answer.take(
                () -> {
                  // Else whoever names any file that is no key would be let out by it
                  boolean misled = organizer && place.isPresent();
                  if (trouble.kind() == Trouble.Kind.USAGE || misled) {
                    missed.accept(trouble);
                  } else {
                    free(trouble, go);
                  }
                }));
  }

  private void free(Trouble trouble, Runnable go) {
    shell.open(
        new StuckPanel(
            trouble,
            texts,
            () -> {
              shell.close();
              go.run();
            },
            shell::close));
  }

  /** One answer of the station; when it does not come in time, the way out is open. */
  private final class Answer {
    private final AtomicBoolean over = new AtomicBoolean();
    private final PauseTransition patience = new PauseTransition(PATIENCE);

    Answer(Runnable go) {
      patience.setOnFinished(e -> take(() -> free(late(), go)));
      patience.play();
    }

    void take(Runnable act) {
      patience.stop();
      if (!over.getAndSet(true)) {
        act.run();
      }
    }

    private Trouble late() {
      return new Trouble(
          texts.of("out.late.what"),
          texts.of("out.late.why", (int) PATIENCE.toSeconds()),
          texts.of("out.late.remedy"),
          "STATION-SILENT",
          Trouble.Kind.ENVIRONMENT);
    }
  }
}
