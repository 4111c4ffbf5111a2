package lanewarden.kiosk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.audit.ReportPanel;
import lanewarden.kiosk.audit.ReportViewModel;
import lanewarden.kiosk.board.BoardScreen;
import lanewarden.kiosk.board.BoardViewModel;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.instrument.ChartPanel;
import lanewarden.kiosk.instrument.ChartViewModel;
import lanewarden.kiosk.instrument.WirePanel;
import lanewarden.kiosk.instrument.WireViewModel;
import lanewarden.kiosk.line.LinePage;
import lanewarden.kiosk.line.LineScreen;
import lanewarden.kiosk.line.LineViewModel;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.rulebook.Adoption;
import lanewarden.kiosk.rulebook.RuleBookScreen;
import lanewarden.kiosk.signin.SignInScreen;
import lanewarden.kiosk.signin.SignInViewModel;
import lanewarden.kiosk.trouble.FaultPanel;
import lanewarden.kiosk.trouble.TroublePanel;
import lanewarden.station.EventFolder;
import lanewarden.station.LineView;
import lanewarden.station.RuleDraft;
import lanewarden.station.Station;
import lanewarden.station.StationException;
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
   */
  record Threads(Executor desk, Executor report, Executor studio, Executor screen, Clock clock) {}

  private final Texts texts = Texts.in(Locale.ENGLISH);
  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.DAY);
  private final Windows windows;
  private final Optional<String> hint;
  private final Desk desk;
  private final Shell shell = new Shell(theme);
  private final LineViewModel line;
  private final LineScreen lineScreen;
  private final BoardViewModel board = new BoardViewModel(texts);
  private final Scene boardScene;
  private final ReportViewModel report;
  private final ChartViewModel chart = new ChartViewModel(texts);
  private final WireViewModel wire;
  private SignInScreen signIn;
  private final EventFolder folder;
  private final Threads threads;
  private Optional<RuleBookScreen> rules = Optional.empty();
  private Optional<String> official = Optional.empty();
  private String head = "";

  Front(
      Station station,
      EventFolder folder,
      Optional<String> hint,
      ReportMaker reports,
      Windows windows,
      Threads threads) {
    this.windows = windows;
    this.hint = hint;
    this.folder = folder;
    this.threads = threads;
    desk = new Desk(station, threads.desk(), threads.screen());
    line = new LineViewModel(desk);
    lineScreen =
        new LineScreen(
            line,
            texts,
            shell,
            new LineScreen.Doors(
                boardButton(), themeButton(), reportButton(), instrumentButton(this::openChart)));
    wire =
        new WireViewModel(
            (answer, missed) -> desk.ask(Station::wire, answer, missed),
            texts,
            ZoneId.systemDefault());
    report = new ReportViewModel(reports, folder, threads.report(), threads.screen(), texts);
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
    board.take(view);
    chart.take(view.verification());
    wire.changed();
    signIn.show(page.place());
    if (!view.official().equals(official)) {
      official = view.official();
      turnPage(page);
    }
  }

  /** The line while an official is on duty, signing in while none is. */
  private void turnPage(LinePage page) {
    if (official.isPresent()) {
      line.dismiss();
      shell.show(lineScreen);
    } else {
      signIn = signInScreen();
      signIn.show(page.place());
      shell.show(signIn);
    }
  }

  private SignInScreen signInScreen() {
    return new SignInScreen(
        new SignInViewModel(desk),
        texts,
        hint,
        themeButton(),
        reportButton(),
        rulesButton(),
        instrumentButton(this::openWire),
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

  private KeyButton rulesButton() {
    return new KeyButton(texts.of("act.rules"), KeyCode.F10, this::openRules);
  }

  /** Opens the event's rule book off the screen's thread, then the studio on it. */
  private void openRules() {
    threads
        .studio()
        .execute(
            () -> {
              try {
                RuleDraft draft = RuleDraft.open(folder.ruleBookFile());
                threads.screen().execute(() -> showRules(draft));
              } catch (StationException | RuntimeException | Error e) {
                Trouble trouble = Trouble.of(e);
                threads.screen().execute(() -> refuseRules(trouble));
              }
            });
  }

  private void refuseRules(Trouble trouble) {
    if (trouble.kind() == Trouble.Kind.BUG) {
      show(trouble);
    } else {
      shell.open(new TroublePanel(trouble, texts, shell::close));
    }
  }

  /** Somebody may have signed in while the file was read: then the line has the screen. */
  private void showRules(RuleDraft draft) {
    if (official.isPresent()) {
      return;
    }
    RuleBookScreen opened =
        Studio.over(
            shell,
            draft,
            texts,
            themeButton(),
            Optional.of(adoption(draft.file())),
            this::closeRules,
            new Studio.Threads(
                threads.clock(), threads.studio(), threads.studio(), threads.screen()));
    rules = Optional.of(opened);
    shell.show(opened);
  }

  private Adoption adoption(Path ruleBook) {
    return new Adoption() {
      @Override
      public Path ruleBook() {
        return ruleBook;
      }

      @Override
      public void adopt(char[] passphrase, String reason, Runnable done, Consumer<Trouble> missed) {
        desk.act(station -> station.proceedings().adoptRuleBook(passphrase, reason), done, missed);
      }
    };
  }

  private void closeRules() {
    rules = Optional.empty();
    shell.show(signIn);
  }

  /** Whether everything may be closed; if not, the official is asked. */
  boolean mayClose() {
    if (rules.filter(RuleBookScreen::isChanged).isEmpty()) {
      return true;
    }
    rules.get().askLeave();
    return false;
  }
}
