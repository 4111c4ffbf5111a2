package lanewarden.metrology;

import java.util.ArrayList;
import java.util.List;

/**
 * An exponentially weighted moving average, which sees a small lasting drift sooner than single
 * values do (NIST/SEMATECH e-Handbook 6.3.2.4).
 *
 * @param start centre line and the average before the first value, m/s; either sign
 * @param deviation standard deviation of a value, m/s, zero or more
 * @param lambda weight of the newest value, more than 0 and at most 1
 * @param k limits in standard deviations of the average, more than 0; 3 by custom
 */
public record EwmaChart(double start, double deviation, double lambda, double k) {
  private static final double CUSTOMARY_WEIGHT = 0.3;
  private static final double CUSTOMARY_WIDTH = 3;

  /**
   * @throws IllegalArgumentException if a figure makes no sense
   */
  public EwmaChart {
    Figures.requireNotNegative(deviation, "the standard deviation of a value");
    Figures.requirePositive(k, "the width of the limits");
    if (!(lambda > 0 && lambda <= 1) || !Double.isFinite(start)) {
      throw new IllegalArgumentException(
          "the weight must be more than 0 and at most 1, and the start a number");
    }
  }

  /**
   * The chart of the same values as a chart of singles: weight 0.3, limits at 3, by the Handbook.
   */
  public static EwmaChart beside(IndividualsChart singles) {
    return new EwmaChart(singles.centre(), singles.deviation(), CUSTOMARY_WEIGHT, CUSTOMARY_WIDTH);
  }

  /** How far the limits lie from the start after very many values. */
  public double asymptoticHalfWidth() {
    return k * deviation * Math.sqrt(lambda / (2 - lambda));
  }

  /** How far they lie from the start at the given value, counted from 1. */
  public double halfWidthAt(int number) {
    Figures.requireAtLeast(1, number, "the number of a value");
    return asymptoticHalfWidth() * Math.sqrt(1 - Math.pow(1 - lambda, 2.0 * number));
  }

  /** The averages against the exact limits, which open with each value. */
  public List<ChartPoint> points(List<Double> values) {
    List<ChartPoint> points = new ArrayList<>();
    double average = start;
    for (int i = 0; i < values.size(); i++) {
      average = lambda * values.get(i) + (1 - lambda) * average;
      double half = halfWidthAt(i + 1);
      points.add(new ChartPoint(i + 1, average, start - half, start + half));
    }
    return points;
  }

  /** The averages against the limits after very many values, as the Handbook draws them. */
  public List<ChartPoint> pointsAgainstAsymptote(List<Double> values) {
    double half = asymptoticHalfWidth();
    return points(values).stream()
        .map(p -> new ChartPoint(p.number(), p.value(), start - half, start + half))
        .toList();
  }
}
