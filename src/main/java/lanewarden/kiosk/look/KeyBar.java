package lanewarden.kiosk.look;

import java.util.List;
import javafx.scene.layout.Priority;

/** The bar of key buttons at the foot of a screen, which share its width. */
public class KeyBar extends Row {

  /** Of these buttons, from left to right. */
  public KeyBar(KeyButton... acts) {
    getStyleClass().add("act-bar");
    offer(List.of(acts));
  }

  /** Puts these in place of those that stand there. */
  public void offer(List<KeyButton> acts) {
    for (KeyButton act : acts) {
      setHgrow(act, Priority.ALWAYS);
      act.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    }
    getChildren().setAll(acts);
  }
}
