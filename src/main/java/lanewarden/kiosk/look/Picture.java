package lanewarden.kiosk.look;

import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import lanewarden.kiosk.look.Inks.Ink;

/**
 * A picture that is drawn by hand, as large as its place and in the theme's inks: anew whenever
 * size, theme or text size change. What it says belongs into its accessible text too.
 */
public abstract class Picture extends Region {
  private final Canvas canvas = new Canvas();
  private final Inks inks = new Inks(this::redraw);

  /** Of nothing yet. */
  protected Picture() {
    getChildren().add(canvas);
    getChildren().addAll(inks.samples());
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
  }

  /**
   * Draws it on an empty ground, with the theme's letters; sizes in pixels.
   *
   * @param em the size of the letters
   */
  protected abstract void draw(GraphicsContext g, double width, double height, double em);

  /** Draws it anew, because it shows something else. */
  protected final void redraw() {
    requestLayout();
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.setFill(inks.of(Ink.CARD));
    g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
    g.setFont(inks.font());
    draw(g, canvas.getWidth(), canvas.getHeight(), inks.font().getSize());
  }

  /** The theme's colours and text size. */
  protected final Inks inks() {
    return inks;
  }

  /** Words, halfway up at their place. */
  protected final void text(
      GraphicsContext g, String words, double x, double y, TextAlignment align) {
    toWrite(g, align);
    g.fillText(words, x, y);
  }

  /** Words that are squeezed where they would be wider than that. */
  protected final void text(
      GraphicsContext g, String words, double x, double y, TextAlignment align, double widest) {
    toWrite(g, align);
    g.fillText(words, x, y, widest);
  }

  private void toWrite(GraphicsContext g, TextAlignment align) {
    g.setFill(inks.of(Ink.TEXT));
    g.setTextAlign(align);
    g.setTextBaseline(VPos.CENTER);
  }

  @Override
  protected final void layoutChildren() {
    if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
      canvas.setWidth(getWidth());
      canvas.setHeight(getHeight());
      redraw();
    }
  }
}
