package lanewarden.kiosk.look;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;

/** What may be longer than its room: it is as wide as that, and is turned by PgUp and PgDn. */
public class Scroll extends ScrollPane {
  private static final double STEP = 0.6;

  private final Region told;

  /**
   * @param told what stands in it
   */
  public Scroll(Region told) {
    super(told);
    this.told = told;
    told.getStyleClass().add("dossier");
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("dossier-scroll");
  }

  private double hidden() {
    return told.getHeight() - getViewportBounds().getHeight();
  }

  /** Whether nothing more is below. */
  public BooleanBinding isAtEnd() {
    return Bindings.createBooleanBinding(
        () -> hidden() <= 0 || getVvalue() >= 1,
        told.heightProperty(),
        viewportBoundsProperty(),
        vvalueProperty());
  }

  /** Goes down (1) or up (-1) by most of what is seen. */
  public void turn(int way) {
    if (hidden() > 0) {
      double step = way * STEP * getViewportBounds().getHeight() / hidden();
      setVvalue(Math.max(0, Math.min(1, getVvalue() + step)));
    }
  }

  /** Turns by its two keys; any other is not its own. */
  public boolean press(KeyCode code) {
    switch (code) {
      case PAGE_DOWN -> turn(1);
      case PAGE_UP -> turn(-1);
      default -> {
        return false;
      }
    }
    return true;
  }
}
