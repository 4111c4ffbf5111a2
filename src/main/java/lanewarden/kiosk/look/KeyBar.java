package lanewarden.kiosk.look;

import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The bar of key buttons at the foot of a screen, which share its width. */
public final class KeyBar extends HBox {

  /** Of these buttons, from left to right. */
  public KeyBar(KeyButton... acts) {
    super(acts);
    for (KeyButton act : acts) {
      setHgrow(act, Priority.ALWAYS);
      act.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    }
    getStyleClass().add("act-bar");
  }
}
