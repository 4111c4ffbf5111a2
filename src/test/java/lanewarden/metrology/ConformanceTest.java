package lanewarden.metrology;

import static lanewarden.metrology.DecisionRule.GUARDED_ACCEPTANCE;
import static lanewarden.metrology.DecisionRule.GUARDED_REJECTION;
import static lanewarden.metrology.DecisionRule.SIMPLE_ACCEPTANCE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;

class ConformanceTest {
  private static final Speed LIMIT = Speed.parse("300 ft/s");
  private static final Conformance ACCEPTANCE = new Conformance(GUARDED_ACCEPTANCE, 2);
  private static final Conformance REJECTION = new Conformance(GUARDED_REJECTION, 2);

  /** JCGM 106:2012 7.3.3 example 1 (from memory): 0.92; recomputed 0.919243. */
  @Test
  void probabilityOfTheStandardsExample() {
    assertEquals(0.919243, Conformance.probabilityWithin(-5.47, -5.40, 0.05), 1e-6);
  }

  /**
   * JCGM 106:2012 8.3.3.2 example 1 (from memory): limit 100 km/h, u = 0.02 v, Pr ≥ 0.999:
   * threshold 106.5876, rounded up 107 km/h. The number alone matters, so m/s stand for km/h.
   */
  @Test
  void speedLawEnforcementRejectsOnlyAboveTheGuardBand() {
    ReadingUncertainty twoPercent =
        new ReadingUncertainty(
            List.of(new ErrorSource.ClockRate(Percent.parse("2 %"), Coverage.factor("1"))));
    Speed threshold =
        new Conformance(GUARDED_REJECTION, 3.0902323)
            .acceptanceLimit(Speed.parse("100 m/s"), twoPercent);
    // the guard band is rounded up to four decimals
    assertEquals(106.5876, threshold.siDouble(), 1.01e-4);
    double at = threshold.siDouble();
    assertEquals(0.001, Conformance.probabilityWithin(at, 100, 0.02 * at), 1e-6);
  }

  /** JCGM 106:2012 8.3.2: with w = 2u the risk is at most 2.3 %; ILAC-G8:09/2019 says < 2.5 %. */
  @Test
  void riskAtTheEdgeOfAGuardBandOfTwo() {
    assertEquals(0.022750, ACCEPTANCE.riskAtTheEdge(), 1e-6);
    assertEquals(0.022750, REJECTION.riskAtTheEdge(), 1e-6);
  }

  /** ILAC-G8:09/2019: without a guard band the risk is up to 50 %. */
  @Test
  void riskWithoutAGuardBand() {
    assertEquals(0.5, Conformance.SIMPLE.riskAtTheEdge());
  }

  /** Normal table, own: 1.645 keeps 5 %, and 1.64 gives 5.05 %. */
  @Test
  void fivePercentNeedsThreeDecimals() {
    assertTrue(new Conformance(GUARDED_ACCEPTANCE, 1.645).riskAtTheEdge() <= 0.05);
    assertEquals(0.0505, new Conformance(GUARDED_ACCEPTANCE, 1.64).riskAtTheEdge(), 1e-5);
  }

  /** Own arithmetic: u 0.3048 m/s is 1 ft/s, so the band is 2 ft/s, to opposite sides. */
  @Test
  void acceptanceAndRejectionHaveOppositeSigns() {
    assertEquals("298.0000 ft/s", ACCEPTANCE.acceptanceLimit(LIMIT, 0.3048).toString());
    assertEquals("302.0000 ft/s", REJECTION.acceptanceLimit(LIMIT, 0.3048).toString());
    assertEquals(LIMIT, Conformance.SIMPLE.acceptanceLimit(LIMIT, 0.3048));
    assertEquals(LIMIT, ACCEPTANCE.acceptanceLimit(LIMIT, 0));
  }

  @Test
  void edgeItselfPassesAndTheNextDigitDoesNot() {
    assertTrue(ACCEPTANCE.accepts(Speed.parse("298 ft/s"), LIMIT, 0.3048));
    assertFalse(ACCEPTANCE.accepts(Speed.parse("298.0000001 ft/s"), LIMIT, 0.3048));
    assertTrue(REJECTION.accepts(Speed.parse("302 ft/s"), LIMIT, 0.3048));
    assertFalse(REJECTION.accepts(Speed.parse("302.0000001 ft/s"), LIMIT, 0.3048));
  }

  /** Neither rounding of the band may pass what its risk would not. */
  @Test
  void bandIsRoundedUp() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 500; i++) {
      double u = random.nextDouble() * 2;
      double passes = ACCEPTANCE.acceptanceLimit(LIMIT, u).siDouble();
      double fails = REJECTION.acceptanceLimit(LIMIT, u).siDouble();
      double risk = ACCEPTANCE.riskAtTheEdge() + 1e-9;
      assertTrue(1 - Conformance.probabilityWithin(passes, 91.44, u) <= risk);
      assertTrue(Conformance.probabilityWithin(fails, 91.44, u) <= risk);
      assertEquals(91.44 - 2 * u, passes, 0.0001 * 0.3048 + 1e-9);
    }
  }

  @Test
  void moreUncertaintyNeverHelpsUnderGuardedAcceptanceNorHurtsUnderGuardedRejection() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 2000; i++) {
      Speed measured = Speed.ofSi(91.44 + random.nextDouble(-2, 2), SpeedUnit.METRES_PER_SECOND);
      double less = random.nextDouble();
      double more = less + random.nextDouble();
      if (!ACCEPTANCE.accepts(measured, LIMIT, less)) {
        assertFalse(ACCEPTANCE.accepts(measured, LIMIT, more));
      }
      if (REJECTION.accepts(measured, LIMIT, less)) {
        assertTrue(REJECTION.accepts(measured, LIMIT, more));
      }
      boolean simple = Conformance.SIMPLE.accepts(measured, LIMIT, more);
      assertEquals(measured.isAtMost(LIMIT), simple);
      assertTrue(simple || !ACCEPTANCE.accepts(measured, LIMIT, more));
      assertTrue(!simple || REJECTION.accepts(measured, LIMIT, more));
    }
  }

  @Test
  void fasterReadingIsNeverLikelierWithin() {
    double before = 1;
    for (double measured = 89; measured < 94; measured += 0.01) {
      double within = Conformance.probabilityWithin(measured, 91.44, 0.3);
      assertTrue(within <= before);
      before = within;
    }
  }

  @Test
  void readingWithoutUncertaintyIsWithinOrNot() {
    assertEquals(1, Conformance.probabilityWithin(91.44, 91.44, 0));
    assertEquals(0, Conformance.probabilityWithin(91.45, 91.44, 0));
  }

  @Test
  void acceptanceLimitWithItsOwnUncertaintyLiesOneBandAway() {
    ReadingUncertainty half =
        new ReadingUncertainty(
            List.of(new ErrorSource.StatedAccuracy(Deviation.parse("0.5 %"), Coverage.LIMITS)));
    for (Conformance rule : List.of(ACCEPTANCE, REJECTION)) {
      Speed edge = rule.acceptanceLimit(LIMIT, half);
      double band = 2 * half.at(edge).combined();
      assertEquals(91.44 + rule.rule().side() * band, edge.siDouble(), 1e-4);
    }
    assertEquals(LIMIT, Conformance.SIMPLE.acceptanceLimit(LIMIT, half));
  }

  @Test
  void wordsSayTheRisk() {
    assertTrue(
        Conformance.SIMPLE.inWords().toString().contains("50.0 % come from arrows that are over"));
    assertTrue(
        ACCEPTANCE
            .inWords()
            .toString()
            .endsWith("passed exactly at the edge, at most 2.3 % are over."));
    assertTrue(
        REJECTION
            .inWords()
            .toString()
            .endsWith("failed exactly at the edge, at most 2.3 % are within."));
    assertTrue(
        new Conformance(GUARDED_ACCEPTANCE, 1.64).inWords().toString().contains("at most 5.1 %"));
    assertTrue(
        new Conformance(GUARDED_ACCEPTANCE, 9).inWords().toString().contains("at most 0.1 %"));
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThrows(IllegalArgumentException.class, () -> new Conformance(SIMPLE_ACCEPTANCE, 1));
    assertThrows(IllegalArgumentException.class, () -> new Conformance(GUARDED_ACCEPTANCE, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new Conformance(GUARDED_REJECTION, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> ACCEPTANCE.acceptanceLimit(LIMIT, 100));
    assertThrows(IllegalArgumentException.class, () -> ACCEPTANCE.acceptanceLimit(LIMIT, -1));
    assertThrows(
        IllegalArgumentException.class, () -> Conformance.probabilityWithin(1, 1, Double.NaN));
    ReadingUncertainty wild =
        new ReadingUncertainty(
            List.of(new ErrorSource.StatedAccuracy(Deviation.parse("60 %"), Coverage.factor("1"))));
    assertThrows(IllegalArgumentException.class, () -> REJECTION.acceptanceLimit(LIMIT, wild));
  }
}
