package lanewarden.kiosk.look;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Brings what is scrolled out of sight back into it. */
public final class Reach {
  private static final double STEP = 0.6;

  private Reach() {}

  /** Scrolls everything that a node stands in until it is in sight, as far as that goes. */
  public static void bring(Node node) {
    for (Node at = node.getParent(); at != null; at = at.getParent()) {
      if (at instanceof ScrollPane pane && pane.getContent() != null) {
        bring(node, pane);
      }
    }
  }

  private static void bring(Node node, ScrollPane pane) {
    Node content = pane.getContent();
    pane.layout();
    Bounds seen = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
    double shown = pane.getViewportBounds().getHeight();
    double hidden = content.getLayoutBounds().getHeight() - shown;
    if (hidden <= 0) {
      return;
    }
    double top = pane.getVvalue() * hidden;
    double wanted = top;
    if (seen.getMaxY() > top + shown) {
      wanted = seen.getMaxY() - shown;
    }
    // What is higher than the room is seen from its beginning
    if (seen.getMinY() < wanted) {
      wanted = seen.getMinY();
    }
    pane.setVvalue(Math.max(0, Math.min(1, wanted / hidden)));
  }

  /** Goes down (1) or up (-1) by most of what is seen. */
  public static void turn(ScrollPane pane, int way) {
    double shown = pane.getViewportBounds().getHeight();
    double hidden = pane.getContent().getLayoutBounds().getHeight() - shown;
    if (hidden > 0) {
      double step = way * STEP * shown / hidden;
      pane.setVvalue(Math.max(0, Math.min(1, pane.getVvalue() + step)));
    }
  }
}
