package lanewarden.kiosk.look;

import javafx.geometry.NodeOrientation;
import javafx.scene.control.TextInputControl;

/**
 * Fields for a number with its unit or for a path, which read from left to right in every language.
 */
public final class Figures {

  private Figures() {}

  /** Makes a field one for figures, or for a path. */
  public static <F extends TextInputControl> F field(F field) {
    field.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
    return field;
  }
}
