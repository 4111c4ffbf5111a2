package lanewarden.audit;

import lanewarden.audit.press.Drawing;

/**
 * The marks of a picture, each its own shape.
 *
 * @param size half their width
 */
record Mark(Drawing drawing, double size) {
  private static final String INSIDE = "fill=\"#00626b\"";
  private static final String ABOVE = "fill=\"#a3230c\"";
  private static final String VOID = "fill=\"none\" stroke=\"#444444\" stroke-width=\"0.9\"";
  private static final String TYPED = "fill=\"none\" stroke=\"#111111\" stroke-width=\"0.6\"";

  /** A reading at most limit and tolerance: a full circle. */
  void inside(double x, double y) {
    drawing.circle(x, y, size, INSIDE);
  }

  /** A reading above them: a full triangle. */
  void above(double x, double y) {
    double r = size * 1.25;
    drawing.path(
        "M" + Drawing.at(x, y - r) + "L" + Drawing.at(x + r, y + r) + "H" + (x - r) + "Z", ABOVE);
  }

  /** A reading that is asked about, or of a check in question: a hollow circle. */
  void open(double x, double y) {
    drawing.circle(x, y, size, VOID);
  }

  /** A void reading: a hollow circle, crossed out. */
  void voided(double x, double y) {
    double r = size * 0.9;
    drawing.circle(x, y, size, VOID);
    drawing.path(
        "M"
            + Drawing.at(x - r, y - r)
            + "L"
            + Drawing.at(x + r, y + r)
            + "M"
            + Drawing.at(x - r, y + r)
            + "L"
            + Drawing.at(x + r, y - r),
        VOID);
  }

  /** A square around the mark of a reading that was typed. */
  void typed(double x, double y) {
    double r = size * 1.7;
    drawing.path(
        "M" + Drawing.at(x - r, y - r) + "H" + (x + r) + "V" + (y + r) + "H" + (x - r) + "Z",
        TYPED);
  }
}
