package lanewarden.kiosk;

import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import lanewarden.kiosk.board.BoardScreen;
import lanewarden.kiosk.board.BoardViewModel;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.LineView;

/** The archers' scene: what it shows, and how; its keys work the official's. */
final class BoardScene {
  private static final double WIDTH = 1280;

  private final BoardViewModel board;
  private final Scene scene;

  /**
   * @param shell takes the keys that are pressed here
   */
  BoardScene(Training training, Texts texts, Appearance look, Shell shell) {
    board = new BoardViewModel(texts);
    Parent frame = training.board(texts, new BoardScreen(board, texts).root());
    scene = new Scene(frame, WIDTH, Shell.HEIGHT);
    // Drawn to be read at three metres, with room for nothing larger
    Shell.dress(
        scene,
        frame,
        look.theme(),
        new SimpleObjectProperty<>(TextSize.PLAIN),
        texts,
        training.height());
    scene.addEventFilter(KeyEvent.ANY, shell::relay);
  }

  Scene scene() {
    return scene;
  }

  /** What became of the line. */
  void take(LineView view) {
    board.take(view);
  }
}
