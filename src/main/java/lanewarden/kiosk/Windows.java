package lanewarden.kiosk;

import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCombination;
import javafx.stage.Screen;
import javafx.stage.Stage;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventFolder;
import lanewarden.station.Station;

/** The two windows: the official's, and the archers' board; on the screen's thread. */
final class Windows implements Front.Windows, Kiosk.Opened {
  private static final double LEAST_WIDTH = 1000;
  private static final double LEAST_HEIGHT = 600;

  private final Stage main = new Stage();
  private final Stage boardStage = new Stage();
  private final Station station;
  private final EventFolder folder;
  private final Training training;
  private final Makers makers;
  private final Front.Threads threads;
  private final Appearance look;
  private Front front;

  private Windows(
      Station station,
      EventFolder folder,
      Training training,
      Makers makers,
      Front.Threads threads,
      Appearance look) {
    this.station = station;
    this.folder = folder;
    this.training = training;
    this.makers = makers;
    this.threads = threads;
    this.look = look;
    front = made();
  }

  private Front made() {
    Front made =
        new Front(
            station, folder, training, makers, this, threads, Texts.in(look.language().get()));
    made.theme().bindBidirectional(look.theme());
    return made;
  }

  /**
   * Opens the official's window.
   *
   * @param closed runs when it is closed; the board closes with it
   */
  static Windows open(
      Station station,
      EventFolder folder,
      Training training,
      Makers makers,
      Front.Threads threads,
      Appearance look,
      Runnable closed) {
    Windows windows = new Windows(station, folder, training, makers, threads, look);
    windows.open(closed);
    return windows;
  }

  /** What it shows. */
  Front front() {
    return front;
  }

  private String title(String text) {
    return training.title(front.texts(), front.texts().of(text));
  }

  private void open(Runnable closed) {
    fill();
    prepare(main);
    main.setOnCloseRequest(
        e -> {
          if (!front.mayClose()) {
            e.consume();
          }
        });
    main.setOnHidden(
        e -> {
          boardStage.hide();
          front.close();
          closed.run();
        });
    boardStage.setFullScreenExitHint("");
    boardStage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    main.show();
  }

  private void fill() {
    main.setTitle(title("window.title"));
    main.setScene(front.official());
    boardStage.setTitle(title("window.board"));
    boardStage.setScene(front.board());
  }

  /** Everything is made anew in the other language; what is shown is the station's, and stays. */
  @Override
  public void speak(Language language) {
    look.language().set(language);
    front.close();
    front = made();
    fill();
  }

  /**
   * Gives a window the program's icon and its least size. A display smaller than the window is
   * filled whole, also where no window manager does it.
   */
  static void prepare(Stage stage) {
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    stage.getIcons().setAll(new Image(String.valueOf(Windows.class.getResource("icon.png"))));
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

  @Override
  public void leave() {
    main.hide();
  }
}
