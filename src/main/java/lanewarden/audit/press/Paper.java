package lanewarden.audit.press;

import lanewarden.audit.press.Style.Sides;

/**
 * The size of a page, in points.
 *
 * @param edges what stays white around its text
 */
record Paper(float width, float height, Sides edges) {
  /** How wide its text is. */
  float textWidth() {
    return width - edges.left() - edges.right();
  }

  /** Where its text ends, from the upper edge. */
  float textEnd() {
    return height - edges.bottom();
  }
}
