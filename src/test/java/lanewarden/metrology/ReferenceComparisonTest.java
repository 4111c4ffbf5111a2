package lanewarden.metrology;

import static lanewarden.metrology.ReferenceComparison.Outcome.IN_LIMITS;
import static lanewarden.metrology.ReferenceComparison.Outcome.OUT;
import static lanewarden.metrology.ReferenceComparison.Outcome.TOO_FEW_SHOTS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewarden.metrology.ReferenceComparison.Pair;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The instrument against a reference, and two speeds that must agree. */
class ReferenceComparisonTest {
  private static final Deviation WIDE = Deviation.parse("100 %");

  /** Station and reference by turns, ft/s. */
  private static ReferenceComparison feet(String... digits) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < digits.length; i += 2) {
      pairs.add(
          new Pair(
              Speed.of(digits[i], SpeedUnit.FEET_PER_SECOND),
              Speed.of(digits[i + 1], SpeedUnit.FEET_PER_SECOND)));
    }
    return new ReferenceComparison(pairs);
  }

  /** Own arithmetic: differences 1, 2, 3 and −2 ft/s: bias 1, deviation √(14/3). */
  @Test
  void biasAndSpreadAreAsByHand() {
    ReferenceComparison comparison = feet("301", "300", "302", "300", "303", "300", "298", "300");
    assertEquals(0.3048, comparison.bias(), 1e-12);
    assertEquals(Math.sqrt(14.0 / 3) * 0.3048, comparison.deviation().orElseThrow(), 1e-12);
    assertEquals(Math.sqrt(14.0 / 3) * 0.3048 / 2, comparison.standardError().orElseThrow(), 1e-12);
    assertEquals(2, comparison.farthest());
    assertEquals(3 * 0.3048, comparison.mostDeviation(), 1e-12);
  }

  /** commons-math3 as the second opinion. */
  @Test
  void agreesWithAnotherLibrary() {
    SplittableRandom random = new SplittableRandom(2);
    for (int n = 2; n < 12; n++) {
      SummaryStatistics other = new SummaryStatistics();
      List<Pair> pairs = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double reference = 90 + random.nextGaussian();
        double station = reference + 0.1 + 0.2 * random.nextGaussian();
        other.addValue(station - reference);
        pairs.add(
            new Pair(
                Speed.ofSi(station, SpeedUnit.METRES_PER_SECOND),
                Speed.ofSi(reference, SpeedUnit.METRES_PER_SECOND)));
      }
      ReferenceComparison comparison = new ReferenceComparison(pairs);
      assertEquals(other.getMean(), comparison.bias(), 1e-9);
      assertEquals(other.getStandardDeviation(), comparison.deviation().orElseThrow(), 1e-9);
    }
  }

  /**
   * OIML R 91:1990 (from memory) allows ±1 % in simulation, ASTM F1544-04 2 ft/s between arrows: 3
   * ft/s of 300 is in, the next digit is out.
   */
  @ParameterizedTest
  @CsvSource({
    "303, 303, 1 %, IN_LIMITS",
    "303.0, 303.0001, 1 %, OUT",
    "297, 297, 1 %, IN_LIMITS",
    "297, 296.9999, 1 %, OUT",
    "301, 303, 2 ft/s, IN_LIMITS",
    "301, 303.0001, 2 ft/s, OUT",
    "302, 302, 0.6096 m/s, IN_LIMITS"
  })
  void biasExactlyAtTheLimitIsIn(
      String first, String second, String most, ReferenceComparison.Outcome outcome) {
    assertEquals(outcome, feet(first, "300", second, "300").against(Deviation.parse(most), WIDE));
  }

  /** Own arithmetic: differences of −1, 0 and 1 ft/s scatter with exactly 1 ft/s. */
  @Test
  void spreadIsComparedExactly() {
    Deviation bias = Deviation.parse("5 ft/s");
    assertEquals(
        IN_LIMITS,
        feet("299", "300", "300", "300", "301", "300").against(bias, Deviation.parse("1 ft/s")));
    assertEquals(
        OUT,
        feet("299", "300", "300", "300", "301.0001", "300")
            .against(bias, Deviation.parse("1 ft/s")));
    // 1 ft/s is a third of a percent of 300
    assertEquals(
        IN_LIMITS,
        feet("299", "300", "300", "300", "301", "300").against(bias, Deviation.parse("0.33334 %")));
    assertEquals(
        OUT,
        feet("299", "300", "300", "300", "301", "300").against(bias, Deviation.parse("0.33333 %")));
  }

  @Test
  void oneShotCanOnlyBeOut() {
    Deviation half = Deviation.parse("0.5 %");
    assertEquals(TOO_FEW_SHOTS, feet("301", "300").against(half, half));
    assertEquals(OUT, feet("302", "300").against(half, half));
    assertTrue(feet("301", "300").deviation().isEmpty());
    assertTrue(feet("301", "300").standardError().isEmpty());
    assertEquals(
        "1 shot: bias +1.000 ft/s (at most 0.5 %), no spread from one shot: shoot again,"
            + " farthest shot 1 by 1.000 ft/s",
        feet("301", "300").inWords(half, half).toString());
  }

  @Test
  void wordsSayWhatIsOut() {
    assertEquals(
        "2 shots: bias -2.000 ft/s (more than 1 ft/s), spread 2.828 ft/s (more than 0.2 %),"
            + " farthest shot 2 by 4.000 ft/s",
        feet("300", "300", "296", "300")
            .inWords(Deviation.parse("1 ft/s"), Deviation.parse("0.2 %"))
            .toString());
  }

  @Test
  void wordsAreInTheUnitOfTheReferenceWhateverTheStationWrites() {
    Deviation most = Deviation.parse("1 ft/s");
    ReferenceComparison metric =
        new ReferenceComparison(
            List.of(
                new ReferenceComparison.Pair(Speed.parse("300 ft/s"), Speed.parse("91.2 m/s")),
                new ReferenceComparison.Pair(Speed.parse("301 ft/s"), Speed.parse("91.4 m/s"))));
    // 300 ft/s are 91.44 m/s and 301 ft/s 91.7448 m/s: 0.24 and 0.3448 m/s more
    assertEquals(
        "2 shots: bias +0.292 m/s (at most 1 ft/s), spread 0.074 m/s (at most 1 ft/s),"
            + " farthest shot 2 by 0.345 m/s",
        metric.inWords(most, most).toString());
  }

  @Test
  void oneShotConvictsNoInstrument() {
    Deviation one = Deviation.parse("1 ft/s");
    assertFalse(feet("310", "300").convicts(one, one));
    assertTrue(feet("310", "300", "310", "300").convicts(one, one), "by its bias");
    assertTrue(feet("302", "300", "298", "300").convicts(one, one), "by its spread");
    assertFalse(feet("301", "300", "301", "300").convicts(one, one));
  }

  @Test
  void refusesNoShots() {
    assertThrows(IllegalArgumentException.class, () -> new ReferenceComparison(List.of()));
  }

  /** Own arithmetic; 1 % of the mean of 298.5 and 301.5 is 3, exactly. */
  @ParameterizedTest
  @CsvSource({
    "298.5, 301.5, 1 %, true",
    "298.5, 301.5000001, 1 %, false",
    "299, 301, 2 ft/s, true",
    "299, 301.0000001, 2 ft/s, false",
    "299, 301, 0.6096 m/s, true",
    "299, 286, 1 %, false",
    "300, 300, 0 %, true"
  })
  void pairAgreesUpToItsTolerance(String one, String other, String tolerance, boolean agree) {
    PairAgreement pair = new PairAgreement(Deviation.parse(tolerance));
    Speed first = Speed.of(one, SpeedUnit.FEET_PER_SECOND);
    Speed second = Speed.of(other, SpeedUnit.FEET_PER_SECOND);
    assertEquals(agree, pair.agree(first, second));
    assertEquals(agree, pair.agree(second, first));
  }

  @Test
  void pairIsComparedAcrossUnits() {
    PairAgreement exact = new PairAgreement(Deviation.parse("0 ft/s"));
    assertTrue(exact.agree(Speed.parse("300 ft/s"), Speed.parse("91.44 m/s")));
    assertFalse(exact.agree(Speed.parse("300 ft/s"), Speed.parse("91.4401 m/s")));
    assertEquals(
        "299 ft/s and 286 ft/s are 13.00 ft/s apart, more than the 1 % allowed",
        new PairAgreement(Deviation.parse("1 %"))
            .inWords(Speed.parse("299 ft/s"), Speed.parse("286 ft/s")));
    assertEquals(
        "299 ft/s and 298 ft/s are 1.00 ft/s apart, within the 1 % allowed",
        new PairAgreement(Deviation.parse("1 %"))
            .inWords(Speed.parse("299 ft/s"), Speed.parse("298 ft/s")));
  }
}
