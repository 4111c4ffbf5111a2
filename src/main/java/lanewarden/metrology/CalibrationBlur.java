package lanewarden.metrology;

/**
 * How a check ends when the calibration error, which all its readings share, is not known: the mean
 * over that error of how it ends when it is.
 *
 * <p>Lengths are in standard deviations of one reading. A wide calibration error is integrated by
 * the trapezoidal rule, which for smooth functions that die away at both ends converges faster than
 * any power of the step (Trefethen and Weideman, SIAM Review 56, 2014; from memory). A chance does
 * not die away at both ends, so a normal distribution function between its two ends, whose mean
 * over the error is known, is taken off first. A narrow one takes three points (Gauss–Hermite).
 */
final class CalibrationBlur {

  /** Against the sharper of calibration error and chance; leaves about 1e-7. */
  private static final double STEP = 0.75;

  /** Up to this share of the width in which a chance turns, three points leave less than 1e-6. */
  private static final double NARROW = 0.15;

  private static final int ENDS = 4;

  private final MarginChances chances;
  private final int rechecks;
  private final double calibration;
  private final boolean narrow;
  private final double step;
  private final int reach;
  private final double[] far;
  private final double[] near;
  private final double[][] rest;

  /**
   * @param calibration standard uncertainty of calibration, zero or more
   * @param sharpness one over the width in which the chances turn from one end to the other
   */
  CalibrationBlur(MarginChances chances, int rechecks, double calibration, double sharpness) {
    this.chances = chances;
    this.rechecks = rechecks;
    this.calibration = calibration;
    this.narrow = calibration <= NARROW / sharpness;
    this.step = STEP * Math.min(1 / sharpness, calibration);
    this.reach = narrow ? 0 : (int) Math.ceil(Bell.EDGE / step);
    this.far = given(5 * Bell.EDGE);
    this.near = given(-5 * Bell.EDGE);
    this.rest = narrow ? new double[0][ENDS] : rest();
  }

  private double[][] rest() {
    double[][] table = new double[2 * reach + 1][];
    for (int i = 0; i < table.length; i++) {
      double margin = (i - reach) * step;
      double[] ends = given(margin);
      double below = Bell.below(margin);
      double above = Bell.above(margin);
      for (int end = 0; end < ENDS; end++) {
        ends[end] -= far[end] * below + near[end] * above;
      }
      table[i] = ends;
    }
    return table;
  }

  /** Within and over of the first check, within and over at the end. */
  private double[] given(double margin) {
    Chances first = chances.at(margin);
    Chances ending = first.after(rechecks);
    return new double[] {first.within(), first.over(), ending.within(), ending.over()};
  }

  /**
   * @param speed carried into the point, m/s
   * @param margin how far the threshold lies above the true speed
   */
  CurvePoint at(double speed, double margin) {
    double[] ends = narrow ? threePoints(margin) : trapezoid(margin);
    // what the quadrature leaves must not show as a chance of less than nothing
    for (int end = 0; end < ENDS; end++) {
      ends[end] = Math.max(0, Math.min(1, ends[end]));
    }
    return new CurvePoint(speed, new Chances(ends[0], ends[1]), new Chances(ends[2], ends[3]));
  }

  private double[] threePoints(double margin) {
    double[] ends = given(margin);
    if (calibration > 0) {
      double[] left = given(margin - Math.sqrt(3) * calibration);
      double[] right = given(margin + Math.sqrt(3) * calibration);
      for (int end = 0; end < ENDS; end++) {
        ends[end] = (left[end] + 4 * ends[end] + right[end]) / 6;
      }
    }
    return ends;
  }

  private double[] trapezoid(double margin) {
    double both = Math.hypot(1, calibration);
    double below = Bell.below(margin / both);
    double above = Bell.above(margin / both);
    double[] ends = new double[ENDS];
    for (int end = 0; end < ENDS; end++) {
      ends[end] = far[end] * below + near[end] * above;
    }
    double width = Bell.EDGE * calibration;
    int first = (int) Math.max(-reach, Math.ceil((margin - width) / step));
    int last = (int) Math.min(reach, Math.floor((margin + width) / step));
    for (int i = first; i <= last; i++) {
      double weight = Bell.density((margin - i * step) / calibration) * step / calibration;
      double[] here = rest[i + reach];
      for (int end = 0; end < ENDS; end++) {
        ends[end] += weight * here[end];
      }
    }
    return ends;
  }
}
