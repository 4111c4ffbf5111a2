package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;

class MeanDifferenceTest {
  private static final double LEVEL = 0.95;

  private static SampleMean mean(double step, double... values) {
    List<Speed> speeds =
        DoubleStream.of(values).mapToObj(v -> Speed.ofSi(v, SpeedUnit.METRES_PER_SECOND)).toList();
    return SampleMean.of(speeds, step, 0);
  }

  /**
   * NIST/SEMATECH e-Handbook 1.3.5.3, miles per gallon of cars from two countries (from memory):
   * 249 with mean 20.14458 and deviation 6.41470, 79 with 30.48101 and 6.10771; without the
   * assumption of equal deviations t is −12.94627 with 136.8750 degrees of freedom.
   */
  @Test
  void handbookExampleWithUnequalDeviations() {
    MeanDifference difference =
        new MeanDifference(
            new SampleMean(new Spread(249, 20.14458, 6.414700), 0, 0),
            new SampleMean(new Spread(79, 30.48101, 6.107710), 0, 0));
    Estimate estimate = difference.estimate();
    assertEquals(-12.94627, estimate.value() / estimate.standard(), 2e-5);
    assertEquals(136.8750, estimate.degrees(), 2e-4);
  }

  /** apache commons-math3, TTest without the assumption of equal variances, on 500 pairs. */
  @Test
  void chanceIsThatOfAGeneralStatisticsLibrary() {
    SplittableRandom random = new SplittableRandom(6);
    TTest library = new TTest();
    for (int i = 0; i < 500; i++) {
      double[] one = series(random, 2 + random.nextInt(6), 90, 0.2 + random.nextDouble());
      double[] other = series(random, 2 + random.nextInt(6), 90.5, 0.2 + random.nextDouble());
      MeanDifference difference = new MeanDifference(mean(0, one), mean(0, other));
      Estimate estimate = difference.estimate();
      assertEquals(library.t(one, other), estimate.value() / estimate.standard(), 1e-9);
      double less = estimate.chanceUpTo(0);
      assertEquals(library.tTest(one, other), 2 * Math.min(less, 1 - less), 1e-9);
    }
  }

  /** The interval and the test are two sides of one thing: p is the share that zero lies out at. */
  @Test
  void intervalEndsAtZeroWhereTheLevelIsOneLessTheChance() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 100; i++) {
      double[] one = series(random, 4, 90, 0.5);
      double[] other = series(random, 5, 91, 0.8);
      MeanDifference difference = new MeanDifference(mean(0, one), mean(0, other));
      double p = new TTest().tTest(one, other);
      assertEquals(Math.abs(difference.estimate().value()), reach(difference, 1 - p, 1), 1e-6);
    }
  }

  private static double reach(MeanDifference difference, double confidence, int pairs) {
    return difference.interval(confidence, pairs).width() / 2;
  }

  private static double[] series(SplittableRandom random, int n, double mean, double deviation) {
    return DoubleStream.generate(() -> mean + deviation * random.nextGaussian()).limit(n).toArray();
  }

  /** Own algebra on commons-math3's variance and t: scatter and step of both, Bonferroni by 28. */
  @Test
  void stepAndNumberOfPairsMakeTheIntervalWider() {
    double[] one = {272, 271, 273, 272};
    double[] other = {276, 277, 276, 275};
    MeanDifference difference = new MeanDifference(mean(1, one), mean(1, other));
    double a = new Variance().evaluate(one) / 4;
    double b = new Variance().evaluate(other) / 4;
    double u2 = a + b + 2.0 / 12;
    double degrees = u2 * u2 / (a * a / 3 + b * b / 3);
    double t = new TDistribution(degrees).inverseCumulativeProbability(1 - 0.05 / 28 / 2);
    assertEquals(t * Math.sqrt(u2), reach(difference, LEVEL, 28), 1e-6);
    assertTrue(reach(difference, LEVEL, 28) > reach(difference, LEVEL, 1));
    assertTrue(
        reach(difference, LEVEL, 1)
            > reach(new MeanDifference(mean(0, one), mean(0, other)), LEVEL, 1));
  }

  /** Own algebra: all shots alike leave the step alone, 1.96 · √(2/12) either way. */
  @Test
  void readingsThatAreAllAlikeAreWorthNoMoreThanTheStep() {
    MeanDifference near = new MeanDifference(mean(1, 300, 300, 300), mean(1, 299, 299, 299));
    assertEquals(1.959964 * Math.sqrt(2 / 12.0), reach(near, LEVEL, 1), 1e-5);
    assertTrue(near.isReal(LEVEL, 1));
    assertFalse(near.isReal(LEVEL, 28));
  }

  /** Own algebra: readings that are alike scatter by 0.4 m/s at least, with a degree each. */
  @Test
  void readingsThatAreAlikeByChanceAreTakenToScatterAsLittleAsIsPossible() {
    List<Speed> alike = Collections.nCopies(2, Speed.parse("90 m/s"));
    SampleMean mean = SampleMean.of(alike, 0, 0.4);
    Estimate difference = new MeanDifference(mean, mean).estimate();
    assertEquals(0.4, difference.standard(), 1e-12);
    assertEquals(2, difference.degrees(), 1e-9);
    assertEquals(0.4 / Math.sqrt(2), mean.estimate().standard(), 1e-12);
    List<Speed> apart = List.of(Speed.parse("90 m/s"), Speed.parse("91 m/s"));
    assertEquals(0.5, SampleMean.of(apart, 0, 0.4).estimate().standard(), 1e-12);
  }

  /**
   * 3,000 families of six pairs of four series that do not differ; 4.5 standard errors are 0.018.
   */
  @Test
  void allIntervalsOfAFamilyHoldTogetherAsOftenAsTheLevelSays() {
    SplittableRandom random = new SplittableRandom(8);
    int wrong = 0;
    for (int i = 0; i < 3_000; i++) {
      List<SampleMean> means =
          DoubleStream.of(0.3, 0.6, 0.9, 0.3)
              .mapToObj(s -> mean(0, series(random, 5, 90, s)))
              .toList();
      boolean any = false;
      for (int j = 0; j < 4; j++) {
        for (int k = j + 1; k < 4; k++) {
          any |= new MeanDifference(means.get(j), means.get(k)).isReal(LEVEL, 6);
        }
      }
      wrong += any ? 1 : 0;
    }
    assertTrue(wrong / 3_000.0 < 0.05 + 0.018, wrong + " of 3000");
    assertTrue(wrong / 3_000.0 > 0.01, "no test that never finds anything: " + wrong);
  }

  @Test
  void whatNeverScattersDiffersByAnythingThatItDiffersBy() {
    assertFalse(new MeanDifference(mean(0, 90, 90), mean(0, 90, 90)).isReal(LEVEL, 1));
    assertTrue(new MeanDifference(mean(0, 90, 90), mean(0, 91, 91)).isReal(LEVEL, 28));
  }

  @Test
  void oneReadingHasNoInterval() {
    SampleMean one = mean(1, 300);
    assertFalse(one.hasInterval());
    assertThrows(IllegalArgumentException.class, one::budget);
    assertThrows(IllegalArgumentException.class, () -> new MeanDifference(one, mean(1, 299, 300)));
    assertThrows(IllegalArgumentException.class, () -> new MeanDifference(mean(1, 299, 300), one));
  }

  @Test
  void refusesAStepOrScatterBelowNothingAndAFamilyOfNoPairs() {
    assertThrows(IllegalArgumentException.class, () -> mean(-1, 300, 301));
    List<Speed> two = List.of(Speed.parse("90 m/s"), Speed.parse("91 m/s"));
    assertThrows(IllegalArgumentException.class, () -> SampleMean.of(two, 0, -1));
    MeanDifference difference = new MeanDifference(mean(1, 300, 301), mean(1, 300, 301));
    assertThrows(IllegalArgumentException.class, () -> difference.interval(LEVEL, 0));
  }
}
