package lanewarden.kiosk.look;

import java.util.Arrays;
import javafx.geometry.NodeOrientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * A sign as drawn; the stylesheet holds the shape. It is not mirrored with a script's direction.
 */
public final class Mark extends Region {

  /** Draws nothing until a sign is shown. */
  public Mark() {
    getStyleClass().add("mark");
    setAccessibleRole(AccessibleRole.NODE);
    setMouseTransparent(true);
    setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
  }

  /** Draws the sign in place of the one before. */
  public void show(Sign sign) {
    show(this, sign);
  }

  /** Marks any region with the sign's style class, so that it takes the sign's colour. */
  public static void show(Region region, Sign sign) {
    region.getStyleClass().removeAll(Arrays.stream(Sign.values()).map(Sign::styleClass).toList());
    region.getStyleClass().add(sign.styleClass());
  }
}
