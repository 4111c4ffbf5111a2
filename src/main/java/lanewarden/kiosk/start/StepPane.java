package lanewarden.kiosk.start;

import java.util.List;
import javafx.scene.Node;
import lanewarden.kiosk.look.KeyButton;

/** What one page of the form shows. */
interface StepPane {
  /** The page. */
  Node node();

  /** Where typing goes first. */
  Node first();

  /** The buttons that only this page has. */
  List<KeyButton> buttons();
}
