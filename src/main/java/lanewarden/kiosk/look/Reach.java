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
    double top = pane.getVvalue() * hidden;
    if (shown <= 0 || hidden <= 0 || (seen.getMinY() >= top && seen.getMaxY() <= top + shown)) {
      return;
    }
    // What it is called stands above it; what is higher than the room is seen from its beginning
    double lead = Math.max(0, Math.min(seen.getHeight(), shown - seen.getHeight()));
    double wanted = Math.min(Math.max(top, seen.getMaxY() - shown), seen.getMinY() - lead);
    pane.setVvalue(Math.max(0, Math.min(1, wanted / hidden)));
  }

  /** Brings it back into sight if the room shrank or grew from what it was, and it was in sight. */
  static void keep(Node node, ScrollPane pane, Bounds before) {
    Node content = pane.getContent();
    Bounds seen = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
    double hidden = content.getLayoutBounds().getHeight() - before.getHeight();
    double top = pane.getVvalue() * hidden;
    boolean laidOut = before.getHeight() > 0 && hidden > 0;
    if (laidOut && seen.getMaxY() > top && seen.getMinY() < top + before.getHeight()) {
      bring(node, pane);
    }
  }

  /** Turns what a node stands in, the outermost of it, down (1) or up (-1) by most of its room. */
  static void turnAround(Node node, int way) {
    ScrollPane outermost = null;
    for (Node at = node.getParent(); at != null; at = at.getParent()) {
      if (at instanceof ScrollPane pane) {
        outermost = pane;
      }
    }
    if (outermost != null) {
      turn(outermost, way);
    }
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
