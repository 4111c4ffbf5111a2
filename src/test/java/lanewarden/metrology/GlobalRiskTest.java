package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import lanewarden.metrology.GlobalRisk.Interval;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GlobalRiskTest {

  private static Interval both(double limit) {
    return new Interval(-limit, limit);
  }

  /** Deaver, guard-banding paper (NCSL, 1990s), p. 7: false accept 0.008, false reject 0.015. */
  @Test
  void deaverLimitOfTwoAtRatioFour() {
    GlobalRisk risk = new GlobalRisk(0, 1, 0.25);
    assertEquals(0.0080061, risk.falseAccept(both(2), both(2)), 1e-7);
    assertEquals(0.0148509, risk.falseReject(both(2), both(2)), 1e-7);
  }

  /** The same, p. 10: acceptance ±1.82, σ_test 0.5: 0.008 and 0.066. */
  @Test
  void deaverGuardBand() {
    GlobalRisk risk = new GlobalRisk(0, 1, 0.5);
    assertEquals(0.0080516, risk.falseAccept(both(2), both(1.82)), 1e-7);
    assertEquals(0.0661065, risk.falseReject(both(2), both(1.82)), 1e-7);
  }

  /** NCSLI RP-19 draft table, ratio 4:1, false accept in % by the share in tolerance. */
  @ParameterizedTest
  @CsvSource({
    "0.60, 4.83860326", "0.70, 3.92234109", "0.80, 2.85583037",
    "0.90, 1.59995312", "0.95, 0.87100925", "0.99, 0.19991684"
  })
  void recommendedPracticeTable(double inTolerance, double percent) {
    double limit = new NormalDistribution().inverseCumulativeProbability((1 + inTolerance) / 2);
    GlobalRisk risk = new GlobalRisk(0, 1, 0.25);
    assertEquals(percent, 100 * risk.falseAccept(both(limit), both(limit)), 1e-6);
  }

  /** Own algebra: at the mean, true value and error make a wedge of arctan(ratio)/2π. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-7, 1e-5, 0.001, 0.05, 0.3, 1, 4})
  void limitAtTheMeanIsAWedge(double ratio) {
    GlobalRisk risk = new GlobalRisk(91.44, 2, 2 * ratio);
    Interval limit = Interval.upTo(91.44);
    double wedge = Math.atan(ratio) / (2 * Math.PI);
    assertEquals(wedge, risk.falseAccept(limit, limit), 1e-9 + 1e-6 * wedge);
    assertEquals(wedge, risk.falseReject(limit, limit), 1e-9 + 1e-6 * wedge);
  }

  /** Archers and readings drawn one by one; 4.5 standard errors. */
  @Test
  void agreesWithArchersDrawnOneByOne() {
    SplittableRandom random = new SplittableRandom(9);
    GlobalRisk risk = new GlobalRisk(90, 1.5, 0.4);
    int archers = 400_000;
    int passedOver = 0;
    int failedWithin = 0;
    for (int i = 0; i < archers; i++) {
      double speed = 90 + 1.5 * random.nextGaussian();
      double reading = speed + 0.4 * random.nextGaussian();
      passedOver += speed > 91.44 && reading <= 91.2 ? 1 : 0;
      failedWithin += speed <= 91.44 && reading > 91.2 ? 1 : 0;
    }
    Interval limit = Interval.upTo(91.44);
    Interval acceptance = Interval.upTo(91.2);
    double accept = risk.falseAccept(limit, acceptance);
    double reject = risk.falseReject(limit, acceptance);
    assertEquals(accept, (double) passedOver / archers, 4.5 * Math.sqrt(accept / archers));
    assertEquals(reject, (double) failedWithin / archers, 4.5 * Math.sqrt(reject / archers));
  }

  /** Own algebra: what is accepted or rejected wrongly or rightly is everything. */
  @Test
  void nothingIsWrongWhereEverythingIsInTolerance() {
    GlobalRisk risk = new GlobalRisk(0, 1, 0.3);
    Interval all = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    assertEquals(0, risk.falseAccept(all, both(1)));
    assertEquals(0, risk.falseReject(both(1), all));
    double rejected = 2 * new NormalDistribution().cumulativeProbability(-1 / Math.hypot(1, 0.3));
    assertEquals(rejected, risk.falseReject(all, both(1)), 1e-9);
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThrows(IllegalArgumentException.class, () -> new GlobalRisk(0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new GlobalRisk(0, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new GlobalRisk(Double.NaN, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Interval(1, 1));
  }
}
