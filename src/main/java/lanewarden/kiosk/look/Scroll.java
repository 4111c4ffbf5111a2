package lanewarden.kiosk.look;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;

/** What may be longer than its room: it is as wide as that, and is turned by PgUp and PgDn. */
public class Scroll extends ScrollPane {
  private static final double STEP = 0.6;

  private final Region told;

  // Held here, so that it is followed as long as this lives
  private final ObservableValue<TextSize> size = ScreenFrame.sizeAt(this);

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

  /** With large text all of it: the screen scrolls, and nothing in the screen beside. */
  @Override
  protected double computePrefHeight(double width) {
    if (!size.getValue().isLarge()) {
      return super.computePrefHeight(width);
    }
    double inner = (width < 0 ? getWidth() : width) - snappedLeftInset() - snappedRightInset();
    return told.prefHeight(inner) + snappedTopInset() + snappedBottomInset() + 1;
  }

  private double hidden() {
    return told.getHeight() - getViewportBounds().getHeight();
  }

  /** Whether nothing more is below; with large text the screen has the end. */
  public BooleanBinding isAtEnd() {
    return Bindings.createBooleanBinding(
        () -> !size.getValue().isLarge() && (hidden() <= 0 || getVvalue() >= 1),
        size,
        told.heightProperty(),
        viewportBoundsProperty(),
        vvalueProperty());
  }

  /** Goes down (1) or up (-1) by most of what is seen; with large text the screen does. */
  public void turn(int way) {
    if (size.getValue().isLarge()) {
      Reach.turnAround(this, way);
    } else if (hidden() > 0) {
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
