package lanewarden.metrology;

/**
 * A check in which so many readings must be within, and all must lie close together.
 *
 * <p>Over the lowest reading x, which is within: the other n − 1 lie between x and x + spread, and
 * enough of them up to the threshold. Where x + spread is within too, all are.
 */
final class SpreadRankedChances implements MarginChances {
  private final DecidingFigure.Ranked figure;
  private final double spread;
  private final double complete;
  private final double close;

  /** C(n − 1, j): how many ways j of the others are within. */
  private final double[] ways;

  SpreadRankedChances(DecidingFigure.Ranked figure, ShotAllowance shots, double spread) {
    int others = figure.readings() - 1;
    this.figure = figure;
    this.spread = spread;
    this.complete = shots.brings(figure.readings());
    this.close = SampleRange.atMost(spread, figure.readings());
    this.ways = new double[others + 1];
    double count = 1;
    for (int j = 0; j <= others; j++) {
      ways[j] = count;
      count *= (double) (others - j) / (j + 1);
    }
  }

  @Override
  public Chances at(double margin) {
    int n = figure.readings();
    double all = SampleRange.lowestUpTo(margin - spread, spread, n);
    double below = Bell.below(margin);
    double some =
        GaussLegendre.integral(
            x ->
                n * Bell.density(x) * enough(below - Bell.below(x), Bell.below(x + spread) - below),
            Math.max(margin - spread, -Bell.EDGE),
            Math.min(margin, Bell.EDGE),
            n);
    double within = Math.min(close, all + some);
    return new Chances(complete * within, complete * (close - within));
  }

  /** That of the others enough lie in the part that is within, and the rest in the part above. */
  private double enough(double within, double over) {
    int others = ways.length - 1;
    double sum = 0;
    for (int j = figure.place() - 1; j <= others; j++) {
      sum += ways[j] * Math.pow(within, j) * Math.pow(over, others - j);
    }
    return sum;
  }
}
