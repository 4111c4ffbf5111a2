package lanewarden.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.metrology.UncertaintyBudget;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MeasuredBowTest {
  private static final double GRAIN = MassUnit.GRAIN.inSi().doubleValue();
  private static final double FOOT = SpeedUnit.FEET_PER_SECOND.inSi().doubleValue();
  private static final Speed LIMIT = Speed.parse("288.4 ft/s");

  /** Integer readings: ±½ ft/s, GUM F.2.2.1. */
  private static final double INTEGER = UncertaintyBudget.resolution(1);

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  /**
   * Common practice: 350 gr at 300 ft/s over a limit of 288.4 needs 29 to 35 gr more, for virtual
   * masses of 0 to 80 gr. Own arithmetic for both ends: (350 + K)·((300/288.4)² − 1).
   */
  @Test
  void threeHundredFiftyGrainsAtThreeHundredFeetNeedTwentyNineToThirtyFiveMore() {
    assertEquals(28.72, more(0, 0.01), 0.01);
    assertEquals(35.28, more(79.99, 80), 0.01);
    Interval needed = needed(VirtualMassRange.COMPOUND, new Estimate(300 * FOOT, 1e-6), 0.95);
    assertEquals("29 to 35", rounded(needed, 350));
  }

  private static double more(double least, double most) {
    VirtualMassRange range = new VirtualMassRange(grains(least), grains(most));
    return needed(range, new Estimate(300 * FOOT, 1e-6), 0.5).high() / GRAIN - 350;
  }

  private static Interval needed(VirtualMassRange range, Estimate speed, double confidence) {
    return new ArrowScaling(range).arrowFor(Mixture.of(speed), grains(350), LIMIT, confidence);
  }

  private static String rounded(Interval kilograms, double less) {
    return Math.round(kilograms.low() / GRAIN - less)
        + " to "
        + Math.round(kilograms.high() / GRAIN - less);
  }

  /**
   * Common practice, four bows of 60 lbf at 29 in; K = (v₂²m₂ − v₁²m₁)/(v₁² − v₂²), own algebra.
   */
  @ParameterizedTest
  @CsvSource({
    "272, 284, -45.06, true",
    "288.5, 298.5, 39.93, false",
    "276.3, 286.7, 8.55, false",
    "290, 300, 41.99, false"
  })
  void fitsTheVirtualMassOfTwoArrows(double heavy, double light, double grains, boolean noise) {
    MeasuredBow bow = pair(heavy, light, INTEGER);
    assertEquals(grains, bow.fittedVirtualMass().orElseThrow().value() / GRAIN, 0.01);
    assertEquals(noise, bow.isNoise());
  }

  /** A negative virtual mass is noise: what is believed of it stays what was supposed. */
  @Test
  void noiseIsNotUsed() {
    Interval believed = pair(272, 284, INTEGER).virtualMass(0.95);
    assertEquals(2, believed.low() / GRAIN, 1e-6);
    assertEquals(78, believed.high() / GRAIN, 1e-6);
  }

  /** Own algebra: u(K) from two readings of ±u, by finite differences of the two-point formula. */
  @Test
  void integerReadingsLeaveTheVirtualMassVeryUncertain() {
    Estimate fit = pair(290, 300, INTEGER).fittedVirtualMass().orElseThrow();
    double heavier = (twoPoint(290.001, 300) - twoPoint(290, 300)) / 0.001;
    double faster = (twoPoint(290, 300.001) - twoPoint(290, 300)) / 0.001;
    assertEquals(INTEGER * Math.hypot(heavier, faster), fit.standard() / GRAIN, 0.05);
    assertTrue(fit.standard() / GRAIN > 15, "more than 15 gr");
  }

  private static double twoPoint(double heavy, double light) {
    return (heavy * heavy * 377.5 - light * light * 350) / (light * light - heavy * heavy);
  }

  /** One arrow says nothing of the virtual mass: the rectangle supposed stays. */
  @Test
  void oneArrowLeavesTheSuppositionAsItWas() {
    MeasuredBow bow = bow(VirtualMassRange.COMPOUND, arrow(350, 300, 0.5));
    assertTrue(bow.fittedVirtualMass().isEmpty());
    assertFalse(bow.isNoise());
    assertEquals(4, bow.virtualMass(0.9).low() / GRAIN, 1e-6);
    assertEquals(76, bow.virtualMass(0.9).high() / GRAIN, 1e-6);
  }

  /** Against the t distribution of Apache Commons Math: a known K leaves only the reading. */
  @Test
  void withAKnownVirtualMassOnlyTheReadingIsUncertain() {
    VirtualMassRange known = new VirtualMassRange(grains(39.999), grains(40.001));
    MeasuredBow bow =
        MeasuredBow.of(
            List.of(new MeasuredArrow(grains(350), new Estimate(300 * FOOT, FOOT, 2))), known);
    double same = Math.sqrt(390.0 / 420);
    assertEquals(
        new TDistribution(2).cumulativeProbability((LIMIT.siDouble() / FOOT / same - 300)),
        bow.speedOf(grains(380)).chanceUpTo(LIMIT.siDouble()),
        1e-6);
  }

  /** Made with K = 40 gr: many precise arrows bring it back, from a range that holds it. */
  @Test
  void manyPreciseArrowsFindTheVirtualMass() {
    List<MeasuredArrow> arrows = new ArrayList<>();
    for (double grains = 300; grains <= 600; grains += 50) {
      arrows.add(arrow(grains, 300 * Math.sqrt(390 / (grains + 40)), 0.05));
    }
    MeasuredBow bow = MeasuredBow.of(arrows, VirtualMassRange.COMPOUND);
    assertTrue(bow.virtualMass(0.95).holds(40 * GRAIN));
    assertTrue(bow.virtualMass(0.95).width() < 3 * GRAIN);
    assertTrue(bow.speedOf(grains(425)).interval(0.95).holds(300 * FOOT * Math.sqrt(390.0 / 465)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aHeavierArrowIsNeverExpectedFaster(long seed) {
    Random random = new Random(seed);
    MeasuredBow bow = random(random, 1 + random.nextInt(4));
    double before = Double.POSITIVE_INFINITY;
    for (double grains = 250; grains < 650; grains += 50) {
      double now = bow.speedOf(grains(grains)).quantile(0.9);
      assertTrue(now < before, "at " + grains);
      before = now;
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theArrowAdvisedBringsTheUpperBoundWithin(long seed) {
    Random random = new Random(seed);
    Estimate speed = new Estimate((280 + 40 * random.nextDouble()) * FOOT, random.nextDouble(), 4);
    Interval needed = needed(VirtualMassRange.COMPOUND, speed, 0.95);
    Mass enough = Mass.ofSi(needed.high(), MassUnit.KILOGRAM);
    MeasuredBow bow = bow(VirtualMassRange.COMPOUND, new MeasuredArrow(grains(350), speed));
    assertEquals(LIMIT.siDouble(), bow.speedOf(enough).quantile(0.95), 1e-4);
    assertTrue(needed.low() <= needed.high());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fewerShotsNeverNarrowWhatIsExpected(long seed) {
    Random random = new Random(seed);
    double speed = 270 + 50 * random.nextDouble();
    double scatter = 0.5 + 2 * random.nextDouble();
    double narrower = 0;
    for (int shots = 9; shots >= 2; shots--) {
      Estimate mean = new Estimate(speed * FOOT, scatter * FOOT / Math.sqrt(shots), shots - 1.0);
      double width = needed(VirtualMassRange.COMPOUND, mean, 0.95).width();
      assertTrue(width > narrower, "with " + shots + " shots");
      narrower = width;
    }
  }

  /** The bow's own algebra, backwards: what it is told is what it says of that arrow. */
  @ParameterizedTest
  @MethodSource("seeds")
  void ofTheMeasuredArrowItSaysWhatWasMeasured(long seed) {
    Random random = new Random(seed);
    double speed = 270 + 50 * random.nextDouble();
    MeasuredBow bow = bow(VirtualMassRange.COMPOUND, arrow(350, speed, 0.7));
    Interval expected = new Estimate(speed * FOOT, 0.7 * FOOT).interval(0.9);
    Interval said = bow.speedOf(grains(350)).interval(0.9);
    assertEquals(expected.low(), said.low(), 1e-6);
    assertEquals(expected.high(), said.high(), 1e-6);
  }

  @Test
  void refusesABowWithoutArrows() {
    assertThrows(
        IllegalArgumentException.class, () -> MeasuredBow.of(List.of(), VirtualMassRange.COMPOUND));
  }

  @Test
  void refusesAReadingWithoutUncertainty() {
    assertThrows(IllegalArgumentException.class, () -> arrow(350, 300, 0));
  }

  private static MeasuredBow random(Random random, int arrows) {
    double virtual = 60 * random.nextDouble();
    double energy = 300 * Math.sqrt(350 + virtual);
    List<MeasuredArrow> measured = new ArrayList<>();
    for (int i = 0; i < arrows; i++) {
      double grains = 320 + 150 * random.nextDouble();
      double speed = energy / Math.sqrt(grains + virtual) + random.nextGaussian();
      measured.add(
          new MeasuredArrow(
              grains(grains), new Estimate(speed * FOOT, FOOT, 2.0 + random.nextInt(6))));
    }
    return MeasuredBow.of(measured, VirtualMassRange.COMPOUND);
  }

  private static MeasuredBow pair(double heavy, double light, double uncertainty) {
    return bow(
        VirtualMassRange.COMPOUND,
        arrow(377.5, heavy, uncertainty),
        arrow(350, light, uncertainty));
  }

  private static MeasuredBow bow(VirtualMassRange range, MeasuredArrow... arrows) {
    return MeasuredBow.of(List.of(arrows), range);
  }

  private static MeasuredArrow arrow(double grains, double feetPerSecond, double uncertainty) {
    return new MeasuredArrow(
        grains(grains), new Estimate(feetPerSecond * FOOT, uncertainty * FOOT));
  }

  private static Mass grains(double grains) {
    return Mass.ofSi(grains * GRAIN, MassUnit.KILOGRAM);
  }
}
