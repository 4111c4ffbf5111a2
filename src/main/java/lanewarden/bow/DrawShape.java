package lanewarden.bow;

import lanewarden.metrology.Interval;

/**
 * The simple estimate of what a bow stores where no force-draw curve was measured: a share of peak
 * draw weight times power stroke, in a range by the kind of bow. Rules of thumb, common practice of
 * the trade.
 */
public enum DrawShape {
  /** The force grows up to full draw, as of a longbow or recurve: about a triangle. */
  RISING(0.45, 0.55),
  /** The force stays near its peak and lets off, as of a compound bow. */
  LET_OFF(0.65, 0.85);

  private final double least;
  private final double most;

  DrawShape(double least, double most) {
    this.least = least;
    this.most = most;
  }

  /** From where to where the stored energy lies, J. */
  public Interval stored(BowLimit bow) {
    double rectangle = bow.mostEnergy().siDouble();
    return new Interval(least * rectangle, most * rectangle);
  }
}
