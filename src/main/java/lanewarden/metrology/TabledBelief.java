package lanewarden.metrology;

/**
 * A belief worked out beforehand at some bounds, with a cubic between them (Lagrange, through the
 * two on either side): narrow steps about the origin, wider ones farther out, since their
 * hyperbolic arc sines are alike. Immutable.
 */
final class TabledBelief implements Belief {
  private static final int STEPS = 200;

  /** So many times the scale lies the last bound: 1,490. */
  private static final double REACH = 8;

  private static final double STEP = 2 * REACH / STEPS;

  private final double scale;
  private final double[] chances = new double[STEPS + 1];

  /**
   * @param belief of a figure about nothing
   * @param scale over which its chances change; more than zero
   */
  TabledBelief(Belief belief, double scale) {
    this.scale = scale;
    for (int i = 0; i <= STEPS; i++) {
      chances[i] = belief.chanceUpTo(scale * Math.sinh(i * STEP - REACH));
    }
  }

  @Override
  public double chanceUpTo(double bound) {
    double far = Math.abs(bound / scale);
    double arc = Math.log(far + Math.sqrt(far * far + 1));
    double place = (Math.copySign(arc, bound) + REACH) / STEP;
    int second = (int) Math.max(1, Math.min(STEPS - 2, Math.floor(place)));
    // Beyond the last bounds there is nothing to be told from none, or from all
    double t = Math.max(-1, Math.min(2, place - second));
    double chance =
        -t * (t - 1) * (t - 2) / 6 * chances[second - 1]
            + (t + 1) * (t - 1) * (t - 2) / 2 * chances[second]
            - (t + 1) * t * (t - 2) / 2 * chances[second + 1]
            + (t + 1) * t * (t - 1) / 6 * chances[second + 2];
    return Math.max(0, Math.min(1, chance));
  }
}
