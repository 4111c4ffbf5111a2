package lanewarden.audit.press;

/**
 * A cell of a table.
 *
 * @param style the box around its content
 */
record TableCell(Style style, Stack content) {
  /** How high it is, its box included. */
  float height() {
    return content.height() + style.inset().top() + style.inset().bottom();
  }
}
