package lanewarden.metrology;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A figure with its standard uncertainty and how well that is known (GUM 3.3.5 and G.3): what is
 * believed of the true value is Student's distribution about it.
 *
 * @param value in any unit
 * @param standard uncertainty in the same unit, zero or more
 * @param degrees of freedom of that uncertainty, more than zero; infinite where it is taken as
 *     known
 */
public record Estimate(double value, double standard, double degrees) implements Belief {
  /**
   * @throws IllegalArgumentException if a figure makes no sense
   */
  public Estimate {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("an estimate must be a number, not " + value);
    }
    Figures.requireNotNegative(standard, "a standard uncertainty");
    if (!(degrees > 0)) {
      throw new IllegalArgumentException(
          "the degrees of freedom must be more than zero, not " + degrees);
    }
  }

  /** A figure whose uncertainty is taken as known. */
  public Estimate(double value, double standard) {
    this(value, standard, Double.POSITIVE_INFINITY);
  }

  @Override
  public double chanceUpTo(double bound) {
    if (standard == 0) {
      return value <= bound ? 1 : 0;
    }
    return TDistribution.of(degrees).cumulativeProbability((bound - value) / standard);
  }

  /**
   * From where to where the true value lies.
   *
   * @param confidence two-sided, more than 0 and less than 1, as 0.95
   */
  public Interval interval(double confidence) {
    double reach = standard * Student.exceeded((1 - confidence) / 2, degrees);
    return new Interval(value - reach, value + reach);
  }

  /** The same figure in another unit, or multiplied otherwise. */
  public Estimate times(double factor) {
    return new Estimate(value * factor, standard * Math.abs(factor), degrees);
  }
}
