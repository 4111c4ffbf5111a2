package lanewarden.metrology;

/**
 * A check in which the mean of the middle two of an even number decides, as early as can be.
 *
 * <p>With n counted and h = n/2, it is within as soon as the h-th and the (h + 1)-th of the m
 * readings that are in have a mean within: readings to come only lower them. The probability of
 * that, A(m), is one integral over the h-th reading x, the next one lying between x and its mirror
 * image in the threshold (joint density of two neighbours in order: David and Nagaraja, Order
 * Statistics, section 2.2; from memory). Over is the same, seen from the other side.
 */
final class MiddlePairChances implements MarginChances {
  private final int readings;
  private final int half;

  /**
   * By m − h − 1: m!/((h − 1)! (m − h)!), times the chance that voids let the m-th reading come,
   * less the chance that they let one more come, which A(m) would otherwise bring a second time.
   */
  private final double[] weights;

  MiddlePairChances(DecidingFigure.MiddlePair figure, ShotAllowance shots) {
    this.readings = figure.readings();
    this.half = readings / 2;
    this.weights = new double[half];
    double orders = half;
    for (int m = half + 1; m <= readings; m++) {
      orders *= (double) m / (m - half);
      double more = m == readings ? 0 : shots.brings(m + 1);
      weights[m - half - 1] = orders * (shots.brings(m) - more);
    }
  }

  @Override
  public Chances at(double margin) {
    return new Chances(within(margin), within(-margin));
  }

  private double within(double margin) {
    return GaussLegendre.integral(
        x -> {
          double above = Bell.above(x);
          double aboveMirror = Bell.above(2 * margin - x);
          double sum = 0;
          double power = 1;
          double powerMirror = 1;
          for (double weight : weights) {
            power *= above;
            powerMirror *= aboveMirror;
            sum += weight * (power - powerMirror);
          }
          return sum * Bell.density(x) * Math.pow(Bell.below(x), half - 1);
        },
        -Bell.EDGE,
        Math.min(margin, Bell.EDGE),
        readings);
  }
}
