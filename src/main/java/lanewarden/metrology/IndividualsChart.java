package lanewarden.metrology;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A chart of single values, whose scatter is taken from how much each differs from the one before
 * (NIST/SEMATECH e-Handbook 6.3.2.2).
 *
 * @param centre mean of the values the limits were set from, for example of station minus
 *     reference, m/s; either sign
 * @param movingRange mean distance from one value to the next, zero or more
 */
public record IndividualsChart(double centre, double movingRange) {

  /** Mean range of two readings of one normal distribution, in standard deviations: 2/√π. */
  private static final double D2 = 1.128;

  private static final double SIGMAS = 3;

  /**
   * @throws IllegalArgumentException if a figure makes no sense
   */
  public IndividualsChart {
    Figures.requireNotNegative(movingRange, "the mean moving range");
    if (!Double.isFinite(centre)) {
      throw new IllegalArgumentException("the centre of a chart must be a number, not " + centre);
    }
  }

  /**
   * With limits from these values.
   *
   * @param values at least two, in the order they were taken
   * @throws IllegalArgumentException if there are fewer
   */
  public static IndividualsChart of(List<Double> values) {
    Figures.requireAtLeast(2, values.size(), "the values that set a chart's limits");
    double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
    double range =
        IntStream.range(1, values.size())
            .mapToDouble(i -> Math.abs(values.get(i) - values.get(i - 1)))
            .average()
            .orElseThrow();
    return new IndividualsChart(mean, range);
  }

  /** Standard deviation behind the moving range; starts an EWMA chart of the same values. */
  public double deviation() {
    return movingRange / D2;
  }

  /** Centre minus three standard deviations. */
  public double lower() {
    return centre - SIGMAS * deviation();
  }

  /** Centre plus three standard deviations: 2.66 moving ranges. */
  public double upper() {
    return centre + SIGMAS * deviation();
  }

  /** These values against the limits. */
  public List<ChartPoint> points(List<Double> values) {
    return IntStream.range(0, values.size())
        .mapToObj(i -> new ChartPoint(i + 1, values.get(i), lower(), upper()))
        .toList();
  }
}
