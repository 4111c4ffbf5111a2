package lanewarden.kiosk;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import lanewarden.kiosk.audit.ReportPanel;
import lanewarden.kiosk.audit.ReportViewModel;
import lanewarden.kiosk.board.BoardScreen;
import lanewarden.kiosk.board.BoardViewModel;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.instrument.ChartPanel;
import lanewarden.kiosk.instrument.ChartViewModel;
import lanewarden.kiosk.instrument.WirePanel;
import lanewarden.kiosk.instrument.WireViewModel;
import lanewarden.kiosk.line.CheckPage;
import lanewarden.kiosk.line.GlanceViewModel;
import lanewarden.kiosk.line.GlanceViewModel.Looking;
import lanewarden.kiosk.line.LinePage;
import lanewarden.kiosk.line.LineScreen;
import lanewarden.kiosk.line.LineViewModel;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.people.PeopleScreen;
import lanewarden.kiosk.people.PeopleViewModel;
import lanewarden.kiosk.protest.ProtestScreen;
import lanewarden.kiosk.protest.ProtestViewModel;
import lanewarden.kiosk.protest.SlipViewModel;
import lanewarden.kiosk.signin.IdleViewModel;
import lanewarden.kiosk.signin.SignInScreen;
import lanewarden.kiosk.signin.SignInViewModel;
import lanewarden.kiosk.trouble.FaultPanel;
import lanewarden.kiosk.trouble.TroublePanel;
import lanewarden.station.EventFolder;
import lanewarden.station.LineView;
import lanewarden.station.Station;
import lanewarden.station.Trouble;

/** All screens of one station and what leads from one to the other; on the screen's thread. */
final class Front {

  /** The windows that the screens stand in. */
  interface Windows {
    /** Shows or hides the board. */
    void turnBoard();

    /** Closes everything. */
    void leave();
  }

  /**
   * Where work is done, and when.
   *
   * @param desk one task after the other, for the station
   * @param report for the audit report
   * @param studio one task after the other, for the rule studio
   * @param screen the screen's thread
   * @param clock gives files that are kept their time
   * @param random for keys and seals
   */
  record Threads(
      Executor desk,
      Executor report,
      Executor studio,
      Executor screen,
      Clock clock,
      SecureRandom random) {}

  private final Texts texts = Texts.in(Locale.ENGLISH);
  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.DAY);
  private final Windows windows;
  private final Optional<String> hint;
  private final Desk desk;
  private final IdleViewModel idle;
  private final Shell shell;
  private final GlanceViewModel glance = new GlanceViewModel(texts);
  private final LineViewModel line;
  private final LineScreen lineScreen;
  private final BoardViewModel board = new BoardViewModel(texts);
  private final Scene boardScene;
  private final ReportViewModel report;
  private final ChartViewModel chart = new ChartViewModel(texts);
  private final WireViewModel wire;
  private final Ways ways;
  private final ProtestViewModel protests;
  private final ProtestScreen protestScreen;
  private final PeopleViewModel people;
  private final PeopleScreen peopleScreen;
  private SignInScreen signIn;
  private final StudioDoor studio;
  private Optional<String> official = Optional.empty();
  private String head = "";

  Front(
      Station station,
      EventFolder folder,
      Optional<String> hint,
      Makers makers,
      Windows windows,
      Threads threads) {
    this.windows = windows;
    this.hint = hint;
    idle = new IdleViewModel(threads.clock(), texts);
    Ribbon ribbon = new Ribbon(idle);
    shell = new Shell(theme, ribbon);
    desk = new Desk(station, threads.desk(), threads.screen());
    studio =
        new StudioDoor(
            folder.ruleBookFile(),
            shell,
            desk,
            texts,
            () -> ThemeButton.of(theme, texts),
            threads,
            () -> official.isEmpty(),
            this::goHome,
            this::refuse);
    ways = new Ways(shell, texts, this::ways);
    line = new LineViewModel(desk);
    lineScreen =
        new LineScreen(
            line,
            texts,
            shell,
            new LineScreen.Doors(
                protestButton(),
                themeButton(),
                List.of(boardButton(), reportButton(), instrumentButton(this::openChart)),
                goToButton()));
    wire =
        new WireViewModel(
            (answer, missed) -> desk.ask(Station::wire, answer, missed),
            texts,
            ZoneId.systemDefault());
    report =
        new ReportViewModel(makers.report(), folder, threads.report(), threads.screen(), texts);
    protests = new ProtestViewModel(desk, texts, ZoneId.systemDefault());
    protestScreen =
        new ProtestScreen(
            protests,
            new SlipViewModel(
                makers.slips(), folder, () -> head, threads.report(), threads.screen(), texts),
            texts,
            shell,
            new ProtestScreen.Doors(themeButton(), goToButton(), this::goHome, this::goHome));
    people = new PeopleViewModel(desk, threads.random(), texts);
    peopleScreen =
        new PeopleScreen(
            people,
            texts,
            shell,
            new PeopleScreen.Doors(themeButton(), goToButton(), this::goHome));
    shell.scene().addEventFilter(InputEvent.ANY, this::stir);
    shell.otherwise(KeyCode.INSERT, ways::open);
    shell.whenTurned(this::turned);
    glance.glance().addListener((all, before, now) -> ribbon.show(now));
    BoardScreen boardScreen = new BoardScreen(board, texts);
    boardScene = new Scene(boardScreen.root(), 1280, 800);
    Shell.dress(boardScene, boardScreen.root(), theme);
    boardScene.addEventFilter(KeyEvent.ANY, shell::relay);
    line.notice().addListener((all, before, now) -> now.ifPresent(this::showIfUnexpected));
    signIn = signInScreen();
    shell.show(signIn);
    desk.listen(this::take);
  }

  /** The official's scene. */
  Scene official() {
    return shell.scene();
  }

  /** The archer's scene. */
  Scene board() {
    return boardScene;
  }

  /** The colours of all scenes. */
  ObjectProperty<Theme> theme() {
    return theme;
  }

  Texts texts() {
    return texts;
  }

  /** Opens the window for a fault that nobody expected. */
  void fault(Throwable thrown) {
    show(Trouble.of(thrown));
  }

  private void showIfUnexpected(Trouble trouble) {
    if (trouble.kind() == Trouble.Kind.BUG) {
      show(trouble);
    }
  }

  private void show(Trouble trouble) {
    shell.open(new FaultPanel(trouble, texts, Front::copy, shell::close));
  }

  static void copy(String details) {
    ClipboardContent content = new ClipboardContent();
    content.putString(details);
    Clipboard.getSystemClipboard().setContent(content);
  }

  private void take(LineView view) {
    LinePage page = LinePage.of(view, texts);
    head = page.head();
    line.take(page);
    glance.take(page, view.official().isPresent());
    protests.take(view);
    idle.take(view);
    board.take(view);
    chart.take(view.verification());
    wire.changed();
    signIn.show(page.place(), page.trouble());
    if (!view.official().equals(official)) {
      official = view.official();
      turnPage();
    }
  }

  /** A key or a finger on the screen keeps whoever is about to be signed out for doing nothing. */
  private void stir(InputEvent event) {
    boolean meant =
        event.getEventType() == KeyEvent.KEY_PRESSED
            || event.getEventType() == MouseEvent.MOUSE_PRESSED;
    if (meant && idle.words().get().isPresent()) {
      desk.act(Station::stir, () -> {}, this::showIfUnexpected);
    }
  }

  /** Whoever looks at something else is told of the line above it. */
  private void turned() {
    boolean atLine = shell.shows(lineScreen);
    if (!shell.shows(protestScreen)) {
      protests.close();
    }
    if (atLine || shell.shows(signIn)) {
      glance.look(shell.hasPanel() && atLine ? Looking.PANEL : Looking.LINE);
    } else {
      glance.look(Looking.ELSEWHERE);
    }
  }

  /** To the line while an official is on duty, else to signing in. */
  private void goHome() {
    if (official.isPresent()) {
      shell.show(lineScreen);
    } else {
      askWho();
    }
  }

  /** A screen of its own each time: who may sign in can have changed. */
  private void askWho() {
    signIn = signInScreen();
    LinePage now = line.page().get();
    if (now != null) {
      signIn.show(now.place(), now.trouble());
    }
    shell.show(signIn);
  }

  private KeyButton goToButton() {
    return new KeyButton(texts.of("act.go-to"), KeyCode.INSERT, ways::open);
  }

  /** Where one can go from here; from the studio only through the question what to save. */
  private List<Ways.Way> ways() {
    boolean onDuty = official.isPresent();
    String signOut = texts.of("way.sign-out-first");
    return List.of(
        onDuty
            ? ways.to("way.line", KeyCode.HOME, leaving(this::goHome))
            : ways.to("way.sign-in", KeyCode.HOME, leaving(this::goHome)),
        ways.to("way.protests", KeyCode.F1, leaving(this::openProtests)),
        ways.to("way.people", KeyCode.F3, leaving(this::openPeople)),
        ways.to("way.report", KeyCode.F8, this::openReport),
        ways.to("way.instrument", KeyCode.DELETE, onDuty ? this::openChart : this::openWire),
        ways.to("way.board", KeyCode.F6, windows::turnBoard),
        ways.to("way.theme", KeyCode.F7, () -> theme.set(theme.get().next())),
        onDuty
            ? ways.barred("way.rules", KeyCode.F10, signOut)
            : ways.to("way.rules", KeyCode.F10, studio::open),
        onDuty
            ? ways.barred("way.leave", KeyCode.F12, signOut)
            : ways.to("way.leave", KeyCode.F12, leaving(windows::leave)));
  }

  private Runnable leaving(Runnable there) {
    return () -> {
      if (studio.mayClose()) {
        there.run();
      }
    };
  }

  private KeyButton protestButton() {
    return new KeyButton(texts.of("act.protests"), KeyCode.F1, this::openProtests);
  }

  private void openPeople() {
    people.open();
    shell.show(peopleScreen);
  }

  /** Somebody may protest against what was decided just now. */
  private void openProtests() {
    protests.open(line.check().or(line.leftLast()::get).map(CheckPage::number));
    shell.show(protestScreen);
  }

  /** The line while an official is on duty, signing in while none is. */
  private void turnPage() {
    if (official.isPresent()) {
      line.dismiss();
    }
    goHome();
  }

  private SignInScreen signInScreen() {
    return new SignInScreen(
        new SignInViewModel(desk),
        texts,
        hint,
        protestButton(),
        new KeyButton(texts.of("act.people"), KeyCode.F3, this::openPeople),
        themeButton(),
        List.of(
            reportButton(),
            new KeyButton(texts.of("act.rules"), KeyCode.F10, studio::open),
            instrumentButton(this::openWire)),
        goToButton(),
        new KeyButton(texts.of("act.leave"), KeyCode.F12, windows::leave));
  }

  private KeyButton boardButton() {
    return new KeyButton(texts.of("act.board"), KeyCode.F6, windows::turnBoard);
  }

  private KeyButton reportButton() {
    return new KeyButton(texts.of("act.report"), KeyCode.F8, this::openReport);
  }

  private void openReport() {
    shell.open(new ReportPanel(report, texts, () -> head, shell::close));
  }

  private KeyButton instrumentButton(Runnable open) {
    return new KeyButton(texts.of("act.instrument"), KeyCode.DELETE, open);
  }

  private void openChart() {
    shell.open(new ChartPanel(chart, texts, this::openWire, shell::close));
  }

  private void openWire() {
    shell.open(new WirePanel(wire, texts, this::openChart, shell::close));
  }

  private KeyButton themeButton() {
    return ThemeButton.of(theme, texts);
  }

  private void refuse(Trouble trouble) {
    if (trouble.kind() == Trouble.Kind.BUG) {
      show(trouble);
    } else {
      shell.open(new TroublePanel(trouble, texts, shell::close));
    }
  }

  /** Whether everything may be closed; if not, the official is asked. */
  boolean mayClose() {
    return studio.mayClose();
  }
}
