package lanewarden.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Speed;
import org.apache.commons.math3.analysis.integration.TrapezoidIntegrator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

/** What a bow stores, and what becomes of it. */
class StoredEnergyTest {

  /** A worked example in print: 48 ft·lbf stored, 500 gr at 170 ft/s. */
  @Test
  void theWorkedExampleHasItsVirtualMassAndEfficiency() {
    Launch launch =
        new Launch(
            new Arrow(Mass.parse("500 gr")), Speed.parse("170 ft/s"), Energy.parse("48 ft·lbf"));
    double grain = MassUnit.GRAIN.inSi().doubleValue();
    assertEquals(248.13, launch.virtualMass() / grain, 0.005);
    assertEquals(0.668, launch.efficiency(), 0.0005);
  }

  /** Energy conserved, own algebra: efficiency is m/(m + K). */
  @Test
  void efficiencyIsTheArrowsShareOfTheMovingMass() {
    Launch launch =
        new Launch(new Arrow(Mass.parse("20 g")), Speed.parse("80 m/s"), Energy.parse("90 J"));
    assertEquals(0.02 / (0.02 + launch.virtualMass()), launch.efficiency(), 1e-12);
  }

  /** Own arithmetic: a triangle of 20 in and 40 lbf is 400 in·lbf, 33⅓ ft·lbf. */
  @Test
  void theStraightDrawOfALongbowIsATriangle() {
    DrawCurve curve = curve("8 in", "0 lbf", "28 in", "40 lbf");
    assertEquals("33.333 ft·lbf", curve.stored().to(EnergyUnit.FOOT_POUND, 3).toString());
    assertEquals("40 lbf", curve.peak().toString());
  }

  /** Against the trapezoid integrator of Apache Commons Math on straight lines between points. */
  @Test
  void aMeasuredCurveHasTheAreaThatTheLibraryFinds() {
    double[] inches = {7, 9, 11, 14, 18, 22, 26, 27.25};
    double[] pounds = {0, 22, 47, 60, 60, 55, 26, 14};
    List<DrawCurve.Point> points =
        IntStream.range(0, inches.length)
            .mapToObj(
                i ->
                    new DrawCurve.Point(
                        Length.parse(inches[i] + " in"), Force.parse(pounds[i] + " lbf")))
            .toList();
    PolynomialSplineFunction lines = new LinearInterpolator().interpolate(inches, pounds);
    double library =
        IntStream.range(1, inches.length)
            .mapToDouble(
                i -> new TrapezoidIntegrator().integrate(999, lines, inches[i - 1], inches[i]))
            .sum();
    double stored =
        new DrawCurve(points).stored().to(EnergyUnit.FOOT_POUND, 9).value().doubleValue();
    assertEquals(library / 12, stored, 1e-9);
  }

  @Test
  void refusesPointsThatAreNoDraw() {
    assertThrows(IllegalArgumentException.class, () -> curve("8 in", "0 lbf"));
    assertThrows(IllegalArgumentException.class, () -> curve("8 in", "0 lbf", "8 in", "10 lbf"));
  }

  /** Common practice: a compound bow stores less than its rectangle, and more than a longbow. */
  @Test
  void theSimpleEstimateIsARangeBelowTheRectangle() {
    BowLimit bow = new BowLimit(Force.parse("60 lbf"), Length.parse("29 in"), Length.parse("7 in"));
    Interval compound = DrawShape.LET_OFF.stored(bow);
    Interval longbow = DrawShape.RISING.stored(bow);
    assertTrue(compound.high() < bow.mostEnergy().siDouble());
    assertTrue(longbow.high() < compound.low());
    assertTrue(longbow.holds(bow.mostEnergy().siDouble() / 2), "a triangle is half of it");
  }

  /**
   * Common practice: 1½ to 2½ ft/s for each pound at 60 lbf and 300 ft/s. One pound less is 59/60.
   */
  @Test
  void aPoundOfDrawWeightIsWorthWhatTheRuleOfThumbSays() {
    DrawScaling proportional = new DrawScaling(0.999_999, 1);
    DrawScaling least = new DrawScaling(0.6, 0.600_001);
    Mixture speed = exactly("300 ft/s");
    assertEquals(
        59.0 / 60, proportional.shareFor(speed, Speed.parse("297.49 ft/s"), 0.5).low(), 1e-4);
    assertEquals(59.0 / 60, least.shareFor(speed, Speed.parse("298.49 ft/s"), 0.5).low(), 1e-4);
  }

  /** Own algebra: F′/F = (L/v)^(2/p), for both ends of the powers. */
  @Test
  void theShareOfDrawWeightIsAnInterval() {
    Interval share =
        DrawScaling.PRACTICE.shareFor(exactly("300 ft/s"), Speed.parse("288.4 ft/s"), 0.999);
    assertEquals(Math.pow(288.4 / 300, 2 / 0.6), share.low(), 0.004);
    assertEquals(Math.pow(288.4 / 300, 2), share.high(), 0.004);
  }

  private static Mixture exactly(String speed) {
    return Mixture.of(new Estimate(Speed.parse(speed).siDouble(), 1e-6));
  }

  private static DrawCurve curve(String... drawsAndForces) {
    return new DrawCurve(
        Stream.iterate(0, i -> i < drawsAndForces.length, i -> i + 2)
            .map(
                i ->
                    new DrawCurve.Point(
                        Length.parse(drawsAndForces[i], LengthUnit.INCH),
                        Force.parse(drawsAndForces[i + 1])))
            .toList());
  }
}
