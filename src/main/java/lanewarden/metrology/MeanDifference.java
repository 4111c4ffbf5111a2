package lanewarden.metrology;

import java.util.stream.Stream;

/**
 * How far the mean of one series lies above that of another, with Welch's interval (B. L. Welch,
 * Biometrika 34 (1947) 28): the two may scatter unequally.
 *
 * <p>What both share, as the calibration of one instrument, falls out of a difference and is not in
 * it.
 *
 * @param one with an interval
 * @param other with an interval
 */
public record MeanDifference(SampleMean one, SampleMean other) {

  /**
   * @throws IllegalArgumentException if one of them has too few readings
   */
  public MeanDifference {
    Figures.requireAtLeast(SampleMean.FEWEST, one.spread().count(), "the readings of a series");
    Figures.requireAtLeast(SampleMean.FEWEST, other.spread().count(), "the readings of a series");
  }

  /** Mean of one less mean of the other, m/s; its degrees of freedom are Welch's. */
  public Estimate estimate() {
    UncertaintyBudget budget =
        UncertaintyBudget.of(
            Stream.of(one, other).flatMap(mean -> mean.influences().stream()).toList());
    return new Estimate(
        one.spread().mean() - other.spread().mean(), budget.combined(), budget.effectiveDegrees());
  }

  /**
   * Where the true difference lies, m/s.
   *
   * <p>Among many pairs some interval misses zero by chance alone. After Bonferroni each of them
   * leaves out only its share of what all together may, so that all of them hold at once with the
   * confidence that was asked for, or more.
   *
   * @param confidence with which all the intervals of the family hold at once, as 0.95
   * @param pairs how many differences are looked at, one or more
   */
  public Interval interval(double confidence, int pairs) {
    Figures.requireAtLeast(1, pairs, "the pairs that are compared");
    return estimate().interval(1 - (1 - confidence) / pairs);
  }

  /** Whether that interval leaves zero out. */
  public boolean isReal(double confidence, int pairs) {
    return !interval(confidence, pairs).holds(0);
  }
}
