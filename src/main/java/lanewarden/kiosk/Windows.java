package lanewarden.kiosk;

import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCombination;
import javafx.stage.Screen;
import javafx.stage.Stage;
import lanewarden.station.EventFolder;
import lanewarden.station.Station;

/** The two windows: the official's, and the archers' board; on the screen's thread. */
final class Windows implements Front.Windows, Kiosk.Opened {
  private static final double LEAST_WIDTH = 1000;
  private static final double LEAST_HEIGHT = 600;

  private final Stage main = new Stage();
  private final Stage boardStage = new Stage();
  private final Front front;
  private final Training training;

  private Windows(
      Station station,
      EventFolder folder,
      Training training,
      Makers makers,
      Front.Threads threads) {
    this.training = training;
    front = new Front(station, folder, training, makers, this, threads);
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
      Runnable closed) {
    Windows windows = new Windows(station, folder, training, makers, threads);
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
    main.setTitle(title("window.title"));
    main.setScene(front.official());
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
          closed.run();
        });
    boardStage.setTitle(title("window.board"));
    boardStage.setScene(front.board());
    boardStage.setFullScreenExitHint("");
    boardStage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    main.show();
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
