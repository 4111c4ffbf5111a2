package lanewarden.kiosk;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCombination;
import javafx.stage.Screen;
import javafx.stage.Stage;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.sound.Cue;
import lanewarden.kiosk.sound.Loudspeaker;

/** The two windows: the official's, and the archers' board; on the screen's thread. */
final class Windows implements Front.Windows, Kiosk.Opened {
  private static final double LEAST_WIDTH = 1000;
  private static final double LEAST_HEIGHT = 600;

  private final Stage main = new Stage();
  private final Stage boardStage = new Stage();
  private final Post post;
  private final Makers makers;
  private final Front.Threads threads;
  private final Appearance look;
  private final Loudspeaker speaker;
  private boolean full;
  private Front front;

  private Windows(Post post, Makers makers, Front.Threads threads, Appearance look) {
    this.post = post;
    this.makers = makers;
    this.threads = threads;
    this.look = look;
    speaker = new Loudspeaker(threads.sound(), threads.screen());
    front = made();
  }

  private Front made() {
    return new Front(post, makers, this, threads, look.beside(look.language().get()));
  }

  /**
   * Opens the official's window.
   *
   * @param post whose station may still be on its way
   * @param closed runs when it is closed; the board closes with it
   */
  static Windows open(
      Post post, Makers makers, Front.Threads threads, Appearance look, Runnable closed) {
    Windows windows = new Windows(post, makers, threads, look);
    windows.open(closed);
    return windows;
  }

  /** What it shows. */
  Front front() {
    return front;
  }

  private String title(String text) {
    return post.training().title(front.texts(), front.texts().of(text));
  }

  private void open(Runnable closed) {
    fill();
    prepare(main);
    main.setOnCloseRequest(
        e -> {
          if (full) {
            e.consume();
            front.askOut(main::hide);
          } else if (!front.mayClose()) {
            e.consume();
          }
        });
    main.setOnHidden(
        e -> {
          boardStage.hide();
          front.close();
          closed.run();
        });
    for (Stage stage : List.of(main, boardStage)) {
      stage.setFullScreenExitHint("");
      stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    }
    // What a desktop takes away comes back with the next touch of the window
    main.focusedProperty().subscribe(focused -> fillScreen(focused && full));
    main.show();
    whenShown(() -> front.furnish());
  }

  /** Runs once, behind the window's first frame. */
  void whenShown(Runnable act) {
    whenShown(main, act);
  }

  private static void whenShown(Stage stage, Runnable act) {
    Scene scene = stage.getScene();
    scene.addPostLayoutPulseListener(
        new Runnable() {
          @Override
          public void run() {
            scene.removePostLayoutPulseListener(this);
            Platform.runLater(act);
          }
        });
    Platform.requestNextPulse();
  }

  private void fillScreen(boolean wanted) {
    if (wanted && !main.isFullScreen()) {
      main.setFullScreen(true);
    }
  }

  @Override
  public void turnFull() {
    if (full) {
      front.askOut(
          () -> {
            full = false;
            main.setFullScreen(false);
          });
    } else {
      full = true;
      fillScreen(true);
    }
  }

  @Override
  public Optional<Chooser> chooser() {
    return full ? Optional.empty() : Optional.of(new SystemChooser(() -> main));
  }

  @Override
  public boolean isFull() {
    return full;
  }

  @Override
  public void end() {
    if (full) {
      front.askOut(main::hide);
    } else {
      main.hide();
    }
  }

  @Override
  public void play(Cue cue) {
    speaker.play(cue, look.volume().get());
  }

  @Override
  public Loudspeaker speaker() {
    return speaker;
  }

  private void fill() {
    main.setTitle(title("window.title"));
    main.setScene(front.official());
    boardStage.setTitle(title("window.board"));
    if (boardStage.isShowing()) {
      boardStage.setScene(front.board());
    }
    fillScreen(full);
  }

  /** Everything is made anew in the other language; what is shown is the station's, and stays. */
  @Override
  public void speak(Language language) {
    look.language().set(language);
    front.close();
    front = made();
    fill();
  }

  private static Image icon() {
    return new Image(String.valueOf(Windows.class.getResource("icon.png")));
  }

  /**
   * Gives a window the program's icon and its least size. A display smaller than the window is
   * filled whole, also where no window manager does it.
   */
  static void prepare(Stage stage) {
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    // To read its picture takes as long as a good part of the screen
    whenShown(stage, () -> stage.getIcons().setAll(icon()));
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    if (room.getWidth() <= stage.getScene().getWidth()
        || room.getHeight() <= stage.getScene().getHeight()) {
      stage.setX(room.getMinX());
      stage.setY(room.getMinY());
      stage.setWidth(room.getWidth());
      stage.setHeight(room.getHeight());
      stage.setMaximized(true);
    }
  }

  /** Opens the window for a fault, from any thread. */
  @Override
  public void fault(Throwable thrown) {
    Platform.runLater(() -> front.fault(thrown));
  }

  /** The board takes the second display whole; with one display it is a window. */
  @Override
  public void turnBoard() {
    if (boardStage.isShowing()) {
      boardStage.hide();
      return;
    }
    boardStage.setScene(front.board());
    Optional<Screen> second =
        Screen.getScreens().stream().filter(s -> !s.equals(Screen.getPrimary())).findFirst();
    if (second.isPresent()) {
      boardStage.setX(second.get().getBounds().getMinX());
      boardStage.setY(second.get().getBounds().getMinY());
      boardStage.setFullScreen(true);
    } else {
      prepare(boardStage);
    }
    boardStage.show();
    boardStage.toFront();
  }

  /** Nobody is asked: the program is told to end. */
  @Override
  public void leave() {
    main.hide();
  }
}
