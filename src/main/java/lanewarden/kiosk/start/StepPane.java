package lanewarden.kiosk.start;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;

/** What one page of the form shows. */
interface StepPane {
  /** The page. */
  Node node();

  /** Where typing goes first. */
  Node first();

  /** The buttons that only this page has. */
  List<KeyButton> buttons();

  /**
   * Takes a key that no button has.
   *
   * @return whether the key means something on this page
   */
  default boolean press(KeyCode code) {
    return false;
  }
}
