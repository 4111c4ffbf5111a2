package lanewarden.kiosk;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
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
import lanewarden.kiosk.line.LinePage;
import lanewarden.kiosk.line.LineScreen;
import lanewarden.kiosk.line.LineViewModel;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.signin.SignInScreen;
import lanewarden.kiosk.signin.SignInViewModel;
import lanewarden.kiosk.trouble.FaultPanel;
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
   * Where work is done.
   *
   * @param desk one task after the other, for the station
   * @param report for the audit report
   * @param screen the screen's thread
   */
  record Threads(Executor desk, Executor report, Executor screen) {}

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
  private SignInScreen signIn;
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
    desk = new Desk(station, threads.desk(), threads.screen());
    line = new LineViewModel(desk);
    lineScreen =
        new LineScreen(
            line, texts, shell, new LineScreen.Doors(boardButton(), themeButton(), reportButton()));
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

  private static void copy(String details) {
    ClipboardContent content = new ClipboardContent();
    content.putString(details);
    Clipboard.getSystemClipboard().setContent(content);
  }

  private void take(LineView view) {
    LinePage page = LinePage.of(view, texts);
    head = page.head();
    line.take(page);
    board.take(view);
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

  private KeyButton themeButton() {
    KeyButton button =
        new KeyButton(words(theme.get()), KeyCode.F7, () -> theme.set(theme.get().next()));
    theme.addListener((all, before, now) -> button.rename(words(now)));
    return button;
  }

  private String words(Theme now) {
    return switch (now) {
      case DAY -> texts.of("theme.day");
      case NIGHT -> texts.of("theme.night");
      case SUNLIGHT -> texts.of("theme.sunlight");
    };
  }
}
