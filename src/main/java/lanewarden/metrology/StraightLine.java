package lanewarden.metrology;

import java.util.List;

/**
 * The straight line y = intercept + slope·x that fits points best: weighted least squares, each
 * point weighing with the inverse square of its standard uncertainty.
 *
 * <p>Formulas as in the NIST/SEMATECH e-Handbook, 4.4.3 and 4.4.5 (from memory), about the weighted
 * mean so that no digits are lost.
 *
 * @param slope in units of y for one of x
 * @param intercept in units of y
 * @param middle weighted mean of x, where the fitted value is best known
 * @param slopeVariance of the slope, from the uncertainties of the points
 * @param middleVariance of the fitted value at {@code middle}, likewise
 * @param squares sum of the squared deviations from the line, each in uncertainties of its point
 * @param degrees of freedom that the points leave: two less than their number
 */
public record StraightLine(
    double slope,
    double intercept,
    double middle,
    double slopeVariance,
    double middleVariance,
    double squares,
    int degrees) {

  /**
   * A point to be fitted.
   *
   * @param x without error
   * @param standard uncertainty of {@code y}, more than zero; where only the scatter about the line
   *     tells it, the same for all, such as 1
   */
  public record Point(double x, double y, double standard) {
    /**
     * @throws IllegalArgumentException if a figure makes no sense
     */
    public Point {
      Figures.requirePositive(standard, "the standard uncertainty of a point");
    }

    private double weight() {
      return 1 / (standard * standard);
    }
  }

  /**
   * The line through these points.
   *
   * @param points two or more, not all at one x
   * @throws IllegalArgumentException if they define no line
   */
  public static StraightLine through(List<Point> points) {
    double weights = points.stream().mapToDouble(Point::weight).sum();
    double x = points.stream().mapToDouble(p -> p.weight() * p.x()).sum() / weights;
    double y = points.stream().mapToDouble(p -> p.weight() * p.y()).sum() / weights;
    double across = points.stream().mapToDouble(p -> p.weight() * (p.x() - x) * (p.x() - x)).sum();
    if (!(across > 0)) {
      throw new IllegalArgumentException("a straight line needs points at two places or more");
    }
    double slope =
        points.stream().mapToDouble(p -> p.weight() * (p.x() - x) * (p.y() - y)).sum() / across;
    double squares =
        points.stream()
            .mapToDouble(p -> (p.y() - y - slope * (p.x() - x)) / p.standard())
            .map(off -> off * off)
            .sum();
    return new StraightLine(
        slope, y - slope * x, x, 1 / across, 1 / weights, squares, points.size() - 2);
  }

  /**
   * Standard deviation of the points about the line in their own uncertainties: about 1 where those
   * are right; no number where only two points were fitted.
   */
  public double deviation() {
    return Math.sqrt(squares / degrees);
  }

  /**
   * The same line with its uncertainties from the scatter of the points about it, as is right where
   * the uncertainties given were only relative.
   *
   * @throws IllegalStateException if two points leave no scatter
   */
  public StraightLine fromScatter() {
    if (degrees == 0) {
      throw new IllegalStateException("two points do not scatter about the line through them");
    }
    double share = squares / degrees;
    return new StraightLine(
        slope, intercept, middle, slopeVariance * share, middleVariance * share, squares, degrees);
  }

  /** Standard uncertainty of the slope. */
  public double slopeStandard() {
    return Math.sqrt(slopeVariance);
  }

  /** Standard uncertainty of the intercept. */
  public double interceptStandard() {
    return standardAt(0);
  }

  /** Standard uncertainty of the line's height at a place. */
  public double standardAt(double x) {
    return Math.sqrt(middleVariance + slopeVariance * (x - middle) * (x - middle));
  }

  /** The line's height at a place. */
  public double at(double x) {
    return intercept + slope * x;
  }

  /**
   * From where to where the slope lies, by the scatter about the line.
   *
   * @param confidence two-sided, more than 0 and less than 1
   * @throws IllegalStateException if two points leave no scatter
   */
  public Interval slopeInterval(double confidence) {
    return new Estimate(slope, fromScatter().slopeStandard(), degrees).interval(confidence);
  }

  /**
   * Where the line meets zero, x = −intercept/slope, to first order (GUM 5.1.2); with its standard
   * uncertainty from those of the points.
   */
  public Estimate zero() {
    double at = -intercept / slope;
    return new Estimate(at, standardAt(at) / Math.abs(slope));
  }
}
