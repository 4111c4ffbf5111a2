package lanewarden.kiosk;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.instrument.ListeningPanels;
import lanewarden.kiosk.instrument.ListeningViewModel;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;

/** What is done without an event: the list of it, and where it leads; on the screen's thread. */
final class Forecourt {

  /**
   * What all that is done there stands on.
   *
   * @param theme makes one more button that turns through the themes
   * @param places from where files are named
   * @param table where they are read and written
   * @param list lists what is done without an event
   * @param home leads back to the start
   */
  record Ground(
      Shell shell,
      Texts texts,
      Chooser chooser,
      Supplier<KeyButton> theme,
      Places places,
      SideTable table,
      Runnable list,
      Runnable home) {

    /** One more button that lists what is done without an event. */
    KeyButton goTo() {
      return new KeyButton(texts.of("act.go-to"), KeyCode.INSERT, list);
    }

    /** One more button that leads back to the start. */
    KeyButton back() {
      return new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, home);
    }

    /** Opens a form over what is shown. */
    void ask(String id, FormViewModel form, FormPanel.Wording wording) {
      shell.open(new FormPanel(id, form, wording, texts, Optional.of(chooser), shell::close));
    }
  }

  private final Ways ways;
  private final ProspectsByFile prospects;
  private final PracticeCorner practice;
  private final ListeningPanels listening;
  private final LedgerCorner ledgers;
  private final CheckUpCorner checkUp;
  private final ListCorner lists;

  /**
   * @param theme makes one more button that turns through the themes
   * @param picked the folder of the event that is picked at the start, if there is one
   * @param home where the way out leads
   */
  Forecourt(
      Shell shell,
      Texts texts,
      Chooser chooser,
      Supplier<KeyButton> theme,
      Makers makers,
      Front.Threads threads,
      Supplier<Optional<Path>> picked,
      Runnable home) {
    ways =
        new Ways(
            shell,
            texts,
            new Ways.Wording(texts.of("without.title"), texts.of("without.words")),
            this::all);
    Ground ground =
        new Ground(
            shell,
            texts,
            chooser,
            theme,
            Places.in(Path.of("")),
            new SideTable(threads.report(), threads.screen()),
            ways::open,
            home);
    prospects = new ProspectsByFile(ground);
    practice = new PracticeCorner(ground, threads.clock());
    listening =
        new ListeningPanels(
            new ListeningViewModel(
                threads.here(), ground.places(), ground.table(), texts, ZoneId.systemDefault()),
            texts,
            shell,
            () -> Optional.of(chooser));
    ledgers = new LedgerCorner(ground, makers, threads);
    checkUp = new CheckUpCorner(ground, makers.checkUp(), picked);
    lists = new ListCorner(ground);
  }

  /** Lists what is done without an event. */
  void open() {
    ways.open();
  }

  private List<Ways.Way> all() {
    return List.of(
        ways.to("way.prospects", KeyCode.F5, prospects::open),
        ways.to("way.setups", KeyCode.F9, practice::open),
        ways.to("way.listen", KeyCode.DELETE, listening::askPort),
        ways.to("way.capture", KeyCode.F6, listening::askCapture),
        ways.to("way.list", KeyCode.F4, lists::open),
        ways.to("way.records", KeyCode.F8, ledgers::open),
        ways.to("way.check-event", KeyCode.END, checkUp::open));
  }
}
