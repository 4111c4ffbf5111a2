package lanewarden.metrology;

import static lanewarden.metrology.SampleModels.THRESHOLD;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OperatingCharacteristicTest {
  private static final double FOOT = 0.3048;
  private static final double NOISE = 1e-8;

  static Stream<CheckModel> calculated() {
    return SampleModels.many(12, model -> ClosedForm.of(model).isPresent()).stream();
  }

  static Stream<CheckModel> calculatedWithoutSpread() {
    return calculated().filter(model -> model.spread().isEmpty());
  }

  private static List<CurvePoint> curve(CheckModel model) {
    return new OperatingCharacteristic(model, 100, 1).curve(THRESHOLD - 2, THRESHOLD + 2, 60);
  }

  @ParameterizedTest
  @MethodSource("calculated")
  void threeChancesMakeOne(CheckModel model) {
    for (CurvePoint point : curve(model)) {
      for (Chances chances : List.of(point.firstCheck(), point.ending())) {
        assertTrue(chances.within() >= 0 && chances.over() >= 0, "" + point);
        assertTrue(chances.within() + chances.over() <= 1 + NOISE, "" + point);
        assertEquals(1, chances.within() + chances.over() + chances.notDecided(), NOISE);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("calculatedWithoutSpread")
  void fasterArcherPassesLessOftenAndFailsMoreOften(CheckModel model) {
    List<CurvePoint> curve = curve(model);
    for (int i = 1; i < curve.size(); i++) {
      Chances slower = curve.get(i - 1).firstCheck();
      Chances faster = curve.get(i).firstCheck();
      assertTrue(faster.within() <= slower.within() + NOISE, "" + curve.get(i));
      assertTrue(faster.over() >= slower.over() - NOISE, "" + curve.get(i));
    }
  }

  @ParameterizedTest
  @MethodSource("calculated")
  void moreToleranceNeverPassesFewer(CheckModel model) {
    Threshold higher = new Threshold(THRESHOLD + 0.2, model.threshold().equalIsWithin());
    List<CurvePoint> strict = curve(model);
    List<CurvePoint> lenient = curve(SampleModels.withThreshold(model, higher));
    for (int i = 0; i < strict.size(); i++) {
      Chances before = strict.get(i).firstCheck();
      Chances after = lenient.get(i).firstCheck();
      assertTrue(after.within() >= before.within() - NOISE, "" + strict.get(i));
      assertTrue(after.over() <= before.over() + NOISE, "" + strict.get(i));
    }
  }

  @ParameterizedTest
  @MethodSource("calculated")
  void moreVoidsForgivenNeverLeaveMoreUndecided(CheckModel model) {
    ShotAllowance shots = model.shots();
    ShotAllowance kinder =
        new ShotAllowance(shots.allowed() + 1, shots.voids() + 1, shots.voidChance());
    List<CurvePoint> strict = curve(model);
    List<CurvePoint> lenient = curve(SampleModels.withShots(model, kinder));
    for (int i = 0; i < strict.size(); i++) {
      assertTrue(
          lenient.get(i).firstCheck().notDecided()
              <= strict.get(i).firstCheck().notDecided() + NOISE);
    }
  }

  @ParameterizedTest
  @MethodSource("calculated")
  void oneMoreRecheckNeverPassesFewer(CheckModel model) {
    List<CurvePoint> fewer = curve(model);
    List<CurvePoint> more = curve(SampleModels.withRechecks(model, model.rechecks() + 1));
    for (int i = 0; i < fewer.size(); i++) {
      assertEquals(fewer.get(i).firstCheck().within(), more.get(i).firstCheck().within(), 1e-6);
      assertTrue(more.get(i).ending().within() >= fewer.get(i).ending().within() - 1e-6);
      assertTrue(more.get(i).ending().over() <= fewer.get(i).ending().over() + 1e-6);
    }
  }

  /**
   * NIST/SEMATECH e-Handbook 6.2.3.2, OC curve of the plan n 52, c 3: the same as 49 of 52 readings
   * within. Two printed cells are off by one in the last digit, hence ±0.001.
   */
  @ParameterizedTest
  @CsvSource({".01, .998", ".02, .980", ".03, .930", ".04, .845", ".05, .739", ".06, .620"})
  void fortyNineOfFiftyTwoIsThePublishedSamplingPlan(double defective, double accepted) {
    CheckModel model =
        SampleModels.plain(DecidingFigure.withinCount(49, 52), new Dispersion(1, 0, 0));
    double margin =
        new org.apache.commons.math3.distribution.NormalDistribution(null, 0, 1)
            .inverseCumulativeProbability(1 - defective);
    CurvePoint point = new OperatingCharacteristic(model, 1, 1).at(THRESHOLD - margin);
    assertEquals(accepted, point.firstCheck().within(), 0.001);
  }

  /** Own arithmetic: one reading; two shots, one void forgiven, half of them void: ½ + ½·½. */
  @Test
  void voidShotThatIsForgivenIsShotAgain() {
    CheckModel model =
        SampleModels.withShots(
            SampleModels.plain(DecidingFigure.highest(1), new Dispersion(0.3, 0, 0)),
            new ShotAllowance(2, 1, 0.5));
    Chances chances = new OperatingCharacteristic(model, 1, 1).at(THRESHOLD).firstCheck();
    assertEquals(0.375, chances.within(), 1e-8);
    assertEquals(0.375, chances.over(), 1e-8);
    assertEquals(0.25, chances.notDecided(), 1e-8);
  }

  /**
   * Own arithmetic: no void forgiven, a tenth void: one reading comes with 0.9, three with 0.9³.
   */
  @Test
  void checkThatDecidesEarlyRisksFewerVoids() {
    CheckModel model =
        SampleModels.withShots(
            SampleModels.plain(DecidingFigure.highest(3), new Dispersion(0.3, 0, 0)),
            new ShotAllowance(3, 0, 0.1));
    OperatingCharacteristic curve = new OperatingCharacteristic(model, 1, 1);
    assertEquals(0.9, curve.at(THRESHOLD + 10).firstCheck().over(), 1e-12);
    assertEquals(0.729, curve.at(THRESHOLD - 10).firstCheck().within(), 1e-12);
  }

  /** Own arithmetic: an honest coin: within ½; with one re-check ½ + ¼, with two ½ + ¼ + ⅛. */
  @ParameterizedTest
  @CsvSource({"0, 0.5", "1, 0.75", "2, 0.875"})
  void recheckDrawsNewReadings(int rechecks, double within) {
    CheckModel model =
        SampleModels.withRechecks(
            SampleModels.plain(DecidingFigure.mean(3), new Dispersion(0.3, 0, 0)), rechecks);
    OperatingCharacteristic curve = new OperatingCharacteristic(model, 1, 1);
    assertEquals(within, curve.at(THRESHOLD).ending().within(), 1e-8);
    OperatingCharacteristic.Risks risks = curve.risks(THRESHOLD, 5);
    assertEquals(1 - within, risks.honestFailed(), 1e-8);
    assertEquals(0, risks.excessPassed(), 1e-8);
  }

  /** An instrument that is off stays off: where only calibration errs, no re-check helps. */
  @Test
  void recheckByTheSameInstrumentKeepsItsCalibrationError() {
    CheckModel model =
        SampleModels.withRechecks(
            SampleModels.plain(DecidingFigure.highest(3), new Dispersion(0, 0, 0.3)), 5);
    OperatingCharacteristic curve = new OperatingCharacteristic(model, 1, 1);
    for (double offset : new double[] {-0.3, -0.1, 0, 0.2}) {
      CurvePoint point = curve.at(THRESHOLD + offset);
      assertEquals(Bell.above(offset / 0.3), point.ending().within(), 1e-7);
      assertEquals(point.firstCheck().within(), point.ending().within(), 1e-9);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "NONE, true, 300.0, 300.1",
    "NONE, false, 299.9, 300.1",
    "NEAREST, true, 300.49, 300.51",
    "NEAREST, false, 299.49, 299.51",
    "DOWN, true, 300.99, 301.01",
    "DOWN, false, 299.99, 300.01"
  })
  void roundedReadingMovesTheThreshold(
      ReadingRounding.Way way, boolean equalIsWithin, double passes, double fails) {
    for (DecidingFigure figure : List.of(DecidingFigure.highest(2), DecidingFigure.mean(2))) {
      CheckModel still = SampleModels.plain(figure, new Dispersion(0, 0, 0));
      CheckModel model =
          SampleModels.withThreshold(
              SampleModels.withRounding(
                  still, new ReadingRounding(way, way == ReadingRounding.Way.NONE ? 0 : FOOT)),
              new Threshold(300 * FOOT, equalIsWithin));
      OperatingCharacteristic curve = new OperatingCharacteristic(model, 10, 1);
      assertEquals(new Chances(1, 0), curve.at(passes * FOOT).firstCheck(), "" + figure);
      assertEquals(new Chances(0, 1), curve.at(fails * FOOT).firstCheck(), "" + figure);
    }
  }

  /** Three readings that round to 300, 300 and 300: exact thirds decide, not binary ones. */
  @ParameterizedTest
  @ValueSource(ints = {280, 291, 300, 303, 309})
  void meanOfRoundedReadingsMayEqualTheThreshold(int feet) {
    CheckModel model =
        SampleModels.withThreshold(
            SampleModels.withRounding(
                SampleModels.plain(DecidingFigure.mean(3), new Dispersion(0, 0, 0)),
                new ReadingRounding(ReadingRounding.Way.NEAREST, FOOT)),
            new Threshold(feet * FOOT, true));
    OperatingCharacteristic curve = new OperatingCharacteristic(model, 10, 1);
    assertFalse(curve.isCalculated());
    assertEquals(new Chances(1, 0), curve.at((feet + 0.3) * FOOT).firstCheck());
  }

  @Test
  void simulatedCurveRepeatsWithItsSeed() {
    CheckModel model =
        SampleModels.withRounding(
            SampleModels.plain(DecidingFigure.mean(3), new Dispersion(0.3, 0.1, 0.1)),
            new ReadingRounding(ReadingRounding.Way.NEAREST, FOOT));
    OperatingCharacteristic curve = new OperatingCharacteristic(model, 2500, 5);
    // a share of one half of 2500: the root of 0.5 x 0.5 / 2500
    assertEquals(0.01, OperatingCharacteristic.standardError(2500), 1e-12);
    assertEquals(curve.curve(91, 92, 5), curve.curve(91, 92, 5));
    assertEquals(
        curve.curve(91, 92, 5), new OperatingCharacteristic(model, 2500, 5).curve(91, 92, 5));
  }

  @Test
  void curveHasBothItsEnds() {
    CheckModel model = SampleModels.plain(DecidingFigure.mean(3), new Dispersion(0.3, 0, 0));
    OperatingCharacteristic curve = new OperatingCharacteristic(model, 1, 1);
    List<CurvePoint> points = curve.curve(90, 93, 7);
    assertEquals(
        List.of(90.0, 90.5, 91.0, 91.5, 92.0, 92.5, 93.0),
        points.stream().map(CurvePoint::speed).toList());
    assertThrows(IllegalArgumentException.class, () -> curve.curve(93, 90, 7));
    assertThrows(IllegalArgumentException.class, () -> curve.curve(90, 93, 1));
    assertThrows(IllegalArgumentException.class, () -> curve.at(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> curve.at(0));
  }
}
