package lanewarden.metrology;

/** How far the highest of a normal sample lies above the lowest. */
final class SampleRange {

  private SampleRange() {}

  /**
   * The probability that all lie within a width.
   *
   * <p>∫ n φ(x) [Φ(x + width) − Φ(x)]ⁿ⁻¹ dx over the lowest reading x (David and Nagaraja, Order
   * Statistics, section 2.3; from memory).
   *
   * @param width in standard deviations, zero or more; infinite for no limit
   * @param readings one or more
   */
  static double atMost(double width, int readings) {
    return width >= 2 * Bell.EDGE || readings == 1 ? 1 : lowestUpTo(Bell.EDGE, width, readings);
  }

  /** The same, and the lowest reading is at most {@code bound}. */
  static double lowestUpTo(double bound, double width, int readings) {
    return GaussLegendre.integral(
        x ->
            readings
                * Bell.density(x)
                * Math.pow(Bell.below(x + width) - Bell.below(x), readings - 1),
        -Bell.EDGE,
        Math.min(bound, Bell.EDGE),
        readings);
  }
}
