package lanewarden.metrology;

import org.apache.commons.statistics.distribution.TDistribution;

/** Student's t distribution; with infinitely many degrees of freedom the normal one. */
final class Student {

  private Student() {}

  /** The value that is exceeded with this probability. */
  static double exceeded(double probability, double degrees) {
    return TDistribution.of(degrees).inverseSurvivalProbability(probability);
  }
}
