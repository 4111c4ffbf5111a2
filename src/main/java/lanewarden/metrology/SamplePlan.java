package lanewarden.metrology;

import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * A random part of the competitors is checked: how likely that finds someone.
 *
 * <p>The number of over-limit archers in the sample is hypergeometric (every sample of the size is
 * equally likely); each of them is caught with the same probability, independently.
 *
 * @param competitors one or more
 * @param overLimit how many of them shoot over the limit, zero or more
 * @param caught probability that a check ends over for one of these, more than 0, at most 1: the
 *     operating characteristic at their speed
 */
public record SamplePlan(int competitors, int overLimit, double caught) {
  /** What binary fractions may lack where a probability is exactly the wanted one. */
  private static final double ROUNDING = 1e-12;

  /**
   * @throws IllegalArgumentException if a number makes no sense
   */
  public SamplePlan {
    Figures.requireAtLeast(1, competitors, "the competitors");
    if (overLimit < 0 || overLimit > competitors) {
      throw new IllegalArgumentException(
          "of " + competitors + " competitors there cannot be " + overLimit + " over the limit");
    }
    if (!(caught > 0 && caught <= 1)) {
      throw new IllegalArgumentException(
          "the probability that a check catches an archer must be more than 0 and at most 1, not "
              + caught);
    }
  }

  /**
   * The probability that at least one of those over the limit is caught.
   *
   * @param checked how many competitors are drawn, zero to all
   */
  public double catchesOne(int checked) {
    if (checked < 0 || checked > competitors) {
      throw new IllegalArgumentException(
          "of " + competitors + " competitors " + checked + " cannot be checked");
    }
    HypergeometricDistribution drawn =
        HypergeometricDistribution.of(competitors, overLimit, checked);
    double nobody = 0;
    for (int in = drawn.getSupportLowerBound(); in <= drawn.getSupportUpperBound(); in++) {
      nobody += drawn.probability(in) * Math.pow(1 - caught, in);
    }
    return Math.max(0, 1 - nobody);
  }

  /**
   * The smallest sample that catches at least one with the wanted probability; none if not even a
   * check of everyone does.
   *
   * @param wanted more than 0, at most 1
   */
  public OptionalInt smallestFor(double wanted) {
    if (!(wanted > 0 && wanted <= 1)) {
      throw new IllegalArgumentException(
          "the wanted probability must be more than 0 and at most 1, not " + wanted);
    }
    // a larger sample never catches less, so the answer can be halved in on
    double enough = wanted - ROUNDING;
    int tooFew = 0;
    int plenty = competitors;
    if (catchesOne(plenty) < enough) {
      return OptionalInt.empty();
    }
    while (plenty - tooFew > 1) {
      int middle = (tooFew + plenty) / 2;
      if (catchesOne(middle) < enough) {
        tooFew = middle;
      } else {
        plenty = middle;
      }
    }
    return OptionalInt.of(plenty);
  }
}
