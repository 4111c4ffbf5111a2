package lanewarden.kiosk;

import java.time.Clock;
import java.util.List;
import javafx.scene.input.KeyCode;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.setups.ComparisonScreen;
import lanewarden.kiosk.setups.ComparisonViewModel;

/** Practice files that are compared without an event; on the screen's thread. */
final class PracticeCorner {
  private static final String SHOTS = "shots";
  private static final String RULES = "rules";

  private final Forecourt.Ground ground;
  private final ComparisonViewModel model;
  private final ComparisonScreen screen;

  PracticeCorner(Forecourt.Ground ground, Clock clock) {
    this.ground = ground;
    model =
        new ComparisonViewModel(
            new ComparisonPaper(clock), ground.places(), ground.table(), ground.texts());
    screen =
        new ComparisonScreen(
            model,
            ground.texts(),
            ground.shell(),
            ground.chooser(),
            new ComparisonScreen.Doors(
                new KeyButton(ground.texts().of("act.setups.begin"), KeyCode.F6, this::open),
                ground.theme().get(),
                ground.goTo(),
                ground.back()));
  }

  /** Asks for a file; what was compared before stays where none is taken. */
  void open() {
    Shell shell = ground.shell();
    ground.ask(
        "practice-file",
        new FormViewModel(
            List.of(
                place(SHOTS, ground.texts().of("setups.ask.file")),
                place(RULES, ground.texts().of("without.ask.rules")).mayStayOpen()),
            (answers, done, missed) ->
                model.open(
                    answers.words(SHOTS),
                    answers.words(RULES),
                    () -> {
                      done.run();
                      shell.show(screen);
                    },
                    missed),
            shell::close),
        new FormPanel.Wording(
            ground.texts().of("compared.ask"),
            ground.texts().of("compared.ask.words"),
            ground.texts().of("compared.ask.act")));
  }

  private static Question place(String name, String label) {
    return Question.words(name, label, List.of()).place(Question.Place.FILE);
  }
}
