package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.setups.BroughtRules;
import lanewarden.kiosk.setups.ProspectsScreen;
import lanewarden.kiosk.setups.ProspectsViewModel;
import lanewarden.station.WrittenRules;

/** What awaits a set-up by a rule book that is chosen for it; on the screen's thread. */
final class ProspectsByFile {
  private static final String RULES = "rules";

  private final Forecourt.Ground ground;
  private Optional<Shown> shown = Optional.empty();

  /** What is there once a rule book was chosen. */
  private record Shown(BroughtRules rules, ProspectsViewModel model, ProspectsScreen screen) {}

  /** A rule book that was chosen, and what stands in it. */
  private record Read(Path file, WrittenRules rules) {}

  ProspectsByFile(Forecourt.Ground ground) {
    this.ground = ground;
  }

  /** Asks for a rule book; the one before stays where none is taken. */
  void open() {
    Texts texts = ground.texts();
    ground.ask(
        "brought-rules",
        new FormViewModel(
            List.of(
                Question.words(RULES, texts.of("without.ask.rules"), List.of())
                    .place(Question.Place.FILE)),
            (answers, done, missed) ->
                ground
                    .table()
                    .ask(
                        () -> {
                          Path file = ground.places().there(answers.words(RULES));
                          return new Read(file, WrittenRules.read(file));
                        },
                        read -> {
                          done.run();
                          show(read);
                        },
                        missed),
            ground.shell()::close),
        new FormPanel.Wording(
            texts.of("without.rules"),
            texts.of("without.rules.words"),
            texts.of("without.rules.act")));
  }

  private void show(Read read) {
    Shown now = shown.orElseGet(() -> made(read.file()));
    shown = Optional.of(now);
    now.rules().turnTo(read.file());
    now.model()
        .turnTo(ground.texts().of("prospects.by", read.rules().event(), read.rules().edition()));
    ground.shell().show(now.screen());
  }

  private Shown made(Path file) {
    Texts texts = ground.texts();
    BroughtRules rules = new BroughtRules(file, ground.table());
    ProspectsViewModel model = new ProspectsViewModel(rules, texts);
    KeyButton other = new KeyButton(texts.of("act.other-rules"), KeyCode.F3, this::open);
    return new Shown(
        rules,
        model,
        new ProspectsScreen(
            model,
            texts,
            new ProspectsScreen.Doors(
                Optional.of(other), ground.theme().get(), ground.goTo(), ground.home())));
  }
}
