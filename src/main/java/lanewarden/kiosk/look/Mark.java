package lanewarden.kiosk.look;

import java.util.Arrays;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** A sign as drawn; the stylesheet holds the shape. */
public final class Mark extends Region {

  /** Draws nothing until a sign is shown. */
  public Mark() {
    getStyleClass().add("mark");
    setAccessibleRole(AccessibleRole.NODE);
    setMouseTransparent(true);
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
