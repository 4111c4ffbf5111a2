package lanewarden.audit.press;

/**
 * How an element of a page looks; lengths in points.
 *
 * @param bottom whether a cell's text stands at its foot
 * @param borderColour as 0xRRGGBB
 * @param width of a column or table, its padding not counted
 * @param withNext whether it must not be the last on a page
 * @param whole whether it is not to be split over pages
 */
record Style(
    Lettering letters,
    boolean bottom,
    Sides margin,
    Sides padding,
    Sides border,
    int borderColour,
    Width width,
    boolean withNext,
    boolean whole) {

  /** An element of which nothing is said. */
  static final Style PLAIN = inside(Lettering.PLAIN);

  /** Lengths at the four sides of a box. */
  record Sides(float top, float right, float bottom, float left) {
    static final Sides NONE = new Sides(0, 0, 0, 0);
  }

  /**
   * How wide a thing is to be.
   *
   * @param length in points, or a share of what there is; less than nothing where it is left open
   */
  record Width(float length, boolean share) {
    static final Width OPEN = new Width(-1, false);

    boolean isOpen() {
      return length < 0;
    }

    /** In points. */
    float of(float whole) {
      return share ? length * whole : length;
    }
  }

  /** Text without a box of its own. */
  static Style inside(Lettering letters) {
    return new Style(
        letters, false, Sides.NONE, Sides.NONE, Sides.NONE, 0, Width.OPEN, false, false);
  }

  /** Border and padding together. */
  Sides inset() {
    return new Sides(
        border.top() + padding.top(),
        border.right() + padding.right(),
        border.bottom() + padding.bottom(),
        border.left() + padding.left());
  }
}
