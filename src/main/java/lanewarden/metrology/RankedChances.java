package lanewarden.metrology;

/**
 * A check in which so many of the counted readings must be within, decided as early as can be.
 *
 * <p>It passes at the m-th reading when that one is the {@code place}-th within, and fails when it
 * is the (readings − place + 1)-th over: two negative binomial distributions, each term weighted
 * with the probability that voids and shots let the m-th reading come.
 */
final class RankedChances implements MarginChances {
  private final double[] passing;
  private final double[] failing;

  RankedChances(DecidingFigure.Ranked figure, ShotAllowance shots) {
    int overs = figure.readings() - figure.place() + 1;
    this.passing = weights(figure.place(), figure.readings(), shots);
    this.failing = weights(overs, figure.readings(), shots);
  }

  /** By how many readings of the other kind came before the last one of {@code needed}. */
  private static double[] weights(int needed, int readings, ShotAllowance shots) {
    double[] weights = new double[readings - needed + 1];
    double orders = 1;
    for (int others = 0; others < weights.length; others++) {
      weights[others] = orders * shots.brings(needed + others);
      orders *= (double) (needed + others) / (others + 1);
    }
    return weights;
  }

  @Override
  public Chances at(double margin) {
    double within = Bell.below(margin);
    double over = Bell.above(margin);
    // as many needed on one side as the other side has terms
    return new Chances(
        Math.pow(within, failing.length) * polynomial(passing, over),
        Math.pow(over, passing.length) * polynomial(failing, within));
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }
}
