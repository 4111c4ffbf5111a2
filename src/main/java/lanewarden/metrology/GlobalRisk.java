package lanewarden.metrology;

/**
 * What a decision rule does to a whole field of archers, before any of them shoots: the global
 * risks of JCGM 106:2012, 9.5, with normal true speeds and normal errors.
 *
 * @param mean of the true speeds, m/s
 * @param deviation standard deviation of the true speeds, m/s, more than zero
 * @param standard standard uncertainty of a reading, m/s, more than zero
 */
public record GlobalRisk(double mean, double deviation, double standard) {

  /**
   * From one end to the other, either of which may be infinite, m/s.
   *
   * @param low −∞ for an upper limit alone
   */
  public record Interval(double low, double high) {
    /**
     * @throws IllegalArgumentException if the ends are not in order
     */
    public Interval {
      if (!(low < high)) {
        throw new IllegalArgumentException("an interval from " + low + " to " + high);
      }
    }

    /** Everything up to a limit. */
    public static Interval upTo(double high) {
      return new Interval(Double.NEGATIVE_INFINITY, high);
    }
  }

  /**
   * @throws IllegalArgumentException if a figure makes no sense
   */
  public GlobalRisk {
    Figures.requirePositive(deviation, "the scatter of the true speeds, in m/s,");
    Figures.requirePositive(standard, "the standard uncertainty, in m/s,");
    if (!Double.isFinite(mean)) {
      throw new IllegalArgumentException("the mean of the true speeds must be a number");
    }
  }

  /** Consumer's risk: that an archer is outside the tolerance and passes, of all archers. */
  public double falseAccept(Interval tolerance, Interval acceptance) {
    return both(Double.NEGATIVE_INFINITY, tolerance.low(), acceptance.low(), acceptance.high())
        + both(tolerance.high(), Double.POSITIVE_INFINITY, acceptance.low(), acceptance.high());
  }

  /** Producer's risk: that an archer is inside the tolerance and fails, of all archers. */
  public double falseReject(Interval tolerance, Interval acceptance) {
    double low = tolerance.low();
    double high = tolerance.high();
    return both(low, high, Double.NEGATIVE_INFINITY, acceptance.low())
        + both(low, high, acceptance.high(), Double.POSITIVE_INFINITY);
  }

  /** That the true speed lies between the first two and the reading between the others. */
  private double both(double from, double to, double lowReading, double highReading) {
    if (lowReading == highReading) {
      return 0;
    }
    double ratio = standard / deviation;
    double low = scaled(lowReading);
    double high = scaled(highReading);
    // outside this nothing is left, and an instrument much finer than the field stays affordable
    double reach = Bell.EDGE * ratio;
    double start = Math.max(Math.max(scaled(from), low - reach), -Bell.EDGE);
    double end = Math.min(Math.min(scaled(to), high + reach), Bell.EDGE);
    // each edge of the readings is as wide as the instrument's error, and the rest is smooth
    double lower = clamp(low + reach, start, end);
    double upper = clamp(high - reach, lower, end);
    return part(start, lower, low, high, ratio)
        + part(lower, upper, low, high, ratio)
        + part(upper, end, low, high, ratio);
  }

  private static double part(double from, double to, double low, double high, double ratio) {
    double width = Math.min(1, Math.max(ratio, (to - from) / 50_000));
    return GaussLegendre.integral(
        x -> Bell.density(x) * (Bell.above((low - x) / ratio) - Bell.above((high - x) / ratio)),
        from,
        to,
        (int) Math.ceil(1 / (width * width)));
  }

  private double scaled(double speed) {
    return (speed - mean) / deviation;
  }

  private static double clamp(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }
}
