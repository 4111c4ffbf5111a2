package lanewarden.metrology;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
final class Bell {

  /** Beyond so many standard deviations nothing is left that counts: 6e-16. */
  static final double EDGE = 8;

  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  private Bell() {}

  static double density(double z) {
    return STANDARD.density(z);
  }

  /** The probability of at most {@code z}. */
  static double below(double z) {
    return STANDARD.cumulativeProbability(z);
  }

  /** The probability of more than {@code z}, exact also where it is tiny. */
  static double above(double z) {
    return STANDARD.survivalProbability(z);
  }
}
