package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.setups.BroughtRules;
import lanewarden.kiosk.setups.ProspectsScreen;
import lanewarden.kiosk.setups.ProspectsViewModel;
import lanewarden.station.WrittenRules;

/** What is done without an event: the list of it, and where it leads; on the screen's thread. */
final class Forecourt {
  private static final String RULES = "rules";

  private final Shell shell;
  private final Texts texts;
  private final Chooser chooser;
  private final Supplier<KeyButton> theme;
  private final SideTable table;
  private final Runnable home;
  private final Ways ways;
  private final Places places = Places.in(Path.of(""));
  private Optional<Prospects> prospects = Optional.empty();

  /** What awaits a set-up by a rule book that was chosen. */
  private record Prospects(BroughtRules rules, ProspectsViewModel model, ProspectsScreen screen) {}

  /**
   * @param theme makes one more button that turns through the themes
   * @param home where the way out leads
   */
  Forecourt(
      Shell shell,
      Texts texts,
      Chooser chooser,
      Supplier<KeyButton> theme,
      Front.Threads threads,
      Runnable home) {
    this.shell = shell;
    this.texts = texts;
    this.chooser = chooser;
    this.theme = theme;
    this.home = home;
    table = new SideTable(threads.report(), threads.screen());
    ways =
        new Ways(
            shell,
            texts,
            new Ways.Wording(texts.of("without.title"), texts.of("without.words")),
            this::all);
  }

  /** Lists what is done without an event. */
  void open() {
    ways.open();
  }

  private List<Ways.Way> all() {
    return List.of(ways.to("way.prospects", KeyCode.F5, this::askRules));
  }

  private KeyButton goTo() {
    return new KeyButton(texts.of("act.go-to"), KeyCode.INSERT, this::open);
  }

  /** By which rule book what awaits a set-up is told; the one before stays where none is taken. */
  private void askRules() {
    shell.open(
        new FormPanel(
            "brought-rules",
            new FormViewModel(
                List.of(
                    Question.words(RULES, texts.of("without.ask.rules"), List.of())
                        .place(Question.Place.FILE)),
                (answers, done, missed) ->
                    table.ask(
                        () -> {
                          Path file = places.there(answers.words(RULES));
                          return new Brought(file, WrittenRules.read(file));
                        },
                        brought -> {
                          done.run();
                          show(brought);
                        },
                        missed),
                shell::close),
            new FormPanel.Wording(
                texts.of("without.rules"),
                texts.of("without.rules.words"),
                texts.of("without.rules.act")),
            texts,
            Optional.of(chooser),
            shell::close));
  }

  /** A rule book that was chosen, and what stands in it. */
  private record Brought(Path file, WrittenRules rules) {}

  private void show(Brought brought) {
    Prospects shown = prospects.orElseGet(() -> prospects(brought.file()));
    prospects = Optional.of(shown);
    shown.rules().turnTo(brought.file());
    shown
        .model()
        .turnTo(texts.of("prospects.by", brought.rules().event(), brought.rules().edition()));
    shell.show(shown.screen());
  }

  private Prospects prospects(Path file) {
    BroughtRules rules = new BroughtRules(file, table);
    ProspectsViewModel model = new ProspectsViewModel(rules, texts);
    return new Prospects(
        rules,
        model,
        new ProspectsScreen(
            model,
            texts,
            new ProspectsScreen.Doors(
                Optional.of(new KeyButton(texts.of("act.other-rules"), KeyCode.F3, this::askRules)),
                theme.get(),
                goTo(),
                home)));
  }
}
