package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingUncertaintyTest {
  private static final Speed SPEED = Speed.parse("91.44 m/s");
  private static final Length SPACING = Length.parse("0.6096 m");
  private static final Coverage ONE = Coverage.factor("1");

  private static UncertaintyBudget budget(ErrorSource... sources) {
    return new ReadingUncertainty(List.of(sources)).at(SPEED);
  }

  /** Own algebra: 0.6096 m ± 0.2 mm, 6.6667 ms, 1 µs each gate: u_v/v 3.9069e-4, 0.035725 m/s. */
  @Test
  void gatesByTheirSpacingAndTiming() {
    double standard =
        budget(
                new ErrorSource.Spacing(SPACING, Length.parse("0.2 mm"), ONE),
                new ErrorSource.GateJitter(SPACING, Duration.ofNanos(1000), ONE))
            .combined();
    assertEquals(0.035725, standard, 1e-6);
    assertEquals(3.9069e-4, standard / SPEED.siDouble(), 1e-8);
  }

  /** Own algebra: the speed from two gates, worked out with each figure moved a little. */
  @Test
  void influencesAreTheSlopesOfSpacingOverTime() {
    double length = 0.6096;
    double time = length / SPEED.siDouble();
    double step = 1e-7;
    double bySpacing = ((length + step) / time - SPEED.siDouble()) / step;
    double byTime = (SPEED.siDouble() - length / (time + step)) / step;
    assertEquals(
        bySpacing * 2e-4,
        budget(new ErrorSource.Spacing(SPACING, Length.parse("0.2 mm"), ONE)).combined(),
        1e-8);
    assertEquals(
        byTime * Math.sqrt(2) * 1e-6,
        budget(new ErrorSource.GateJitter(SPACING, Duration.ofNanos(1000), ONE)).combined(),
        1e-6);
    assertEquals(
        byTime * Math.sqrt(2) * 1e-6 / Math.sqrt(12),
        budget(new ErrorSource.ClockTick(SPACING, Duration.ofNanos(1000))).combined(),
        1e-6);
  }

  /** Screen spacing 10.0 ft set 1/16 in too long, common practice: +0.0521 % on every speed. */
  @Test
  void spacingSetTooLongByASixteenth() {
    double standard =
        budget(
                new ErrorSource.Spacing(
                    Length.parse("10.0 ft"), Length.parse("0.0625 in"), Coverage.LIMITS))
            .combined();
    assertEquals(0.000521, standard * Math.sqrt(3) / SPEED.siDouble(), 5e-7);
  }

  /** Own arithmetic for each of the other sources at 91.44 m/s. */
  @Test
  void otherSourcesAreAsByHand() {
    assertEquals(
        91.44 * 1e-4 / Math.sqrt(3),
        budget(new ErrorSource.ClockRate(Percent.parse("0.01 %"), Coverage.LIMITS)).combined(),
        1e-12);
    assertEquals(
        0.1 * 0.3048 / Math.sqrt(12),
        budget(new ErrorSource.DisplayStep(Speed.parse("0.1 ft/s"))).combined(),
        1e-12);
    assertEquals(
        0.2286,
        budget(new ErrorSource.StatedAccuracy(Deviation.parse("0.5 %"), Coverage.factor("2")))
            .combined(),
        1e-12);
    assertEquals(
        0.3048 / Math.sqrt(3),
        budget(new ErrorSource.StatedAccuracy(Deviation.parse("1 ft/s"), Coverage.LIMITS))
            .combined(),
        1e-12);
    assertEquals(
        91.44 * 0.001386331 * 0.5,
        budget(new ErrorSource.Distance(Length.parse("0.5 m"), 0.001386331, ONE)).combined(),
        1e-12);
  }

  /** Own computation of 1 − cos θ, as in the table of the hardware notes. */
  @ParameterizedTest
  @CsvSource({"0, 0", "2, 0.06", "5, 0.38", "10, 1.52"})
  void crookedFlightReadsSlow(double degrees, double percentSlow) {
    assertEquals(percentSlow, 100 * new Alignment(degrees).slow(), 0.005);
  }

  /** Own computation: root mean square of 100,000 errors spread evenly from 0 to 1 − cos 5°. */
  @Test
  void crookedFlightCountsWithItsMeanBecauseNothingIsCorrected() {
    double most = 91.44 * (1 - Math.cos(Math.toRadians(5)));
    double squares = 0;
    for (int i = 0; i < 100_000; i++) {
      squares += Math.pow(most * (i + 0.5) / 100_000, 2);
    }
    assertEquals(
        Math.sqrt(squares / 100_000),
        budget(new ErrorSource.CrookedFlight(new Alignment(5))).combined(),
        1e-9);
  }

  @Test
  void onlyRepeatabilityHasFewDegreesOfFreedom() {
    UncertaintyBudget budget =
        budget(
            new ErrorSource.Repeatability(Speed.parse("0.1 m/s"), 5),
            new ErrorSource.DisplayStep(Speed.parse("0.1 ft/s")));
    assertEquals(UncertaintyBudget.Evaluation.TYPE_A, budget.influences().get(0).how());
    assertEquals(4, budget.influences().get(0).degrees());
    assertTrue(Double.isInfinite(budget.influences().get(1).degrees()));
  }

  @Test
  void meanShrinksWhatIsNewAndKeepsWhatIsShared() {
    List<ErrorSource> shared =
        List.of(
            new ErrorSource.Spacing(SPACING, Length.parse("0.2 mm"), ONE),
            new ErrorSource.ClockRate(Percent.parse("0.01 %"), ONE),
            new ErrorSource.StatedAccuracy(Deviation.parse("0.5 %"), ONE),
            new ErrorSource.CrookedFlight(new Alignment(3)),
            new ErrorSource.Distance(Length.parse("0.5 m"), 0.001, ONE));
    List<ErrorSource> fresh =
        List.of(
            new ErrorSource.GateJitter(SPACING, Duration.ofNanos(1000), ONE),
            new ErrorSource.ClockTick(SPACING, Duration.ofNanos(1000)),
            new ErrorSource.DisplayStep(Speed.parse("0.1 ft/s")),
            new ErrorSource.Repeatability(Speed.parse("0.1 m/s"), 5));
    assertEquals(
        new ReadingUncertainty(shared).at(SPEED).combined(),
        new ReadingUncertainty(shared).atMeanOf(4, SPEED).combined());
    assertEquals(
        new ReadingUncertainty(fresh).at(SPEED).combined() / 2,
        new ReadingUncertainty(fresh).atMeanOf(4, SPEED).combined(),
        1e-12);
    List<ErrorSource> all = new ArrayList<>(shared);
    all.addAll(fresh);
    new ReadingUncertainty(all)
        .at(SPEED)
        .influences()
        .forEach(i -> assertTrue(i.standard() > 0 && i.words().length() > 10, i.toString()));
  }

  @Test
  void wordsSayWhatWasStated() {
    assertEquals(
        "accuracy ± 0.5 % (k = 2)",
        budget(new ErrorSource.StatedAccuracy(Deviation.parse("0.5 %"), Coverage.parse("k=2")))
            .influences()
            .get(0)
            .words());
    assertEquals(
        "flight up to 5.0° off the line of the gates, reads up to 0.38 % slow",
        budget(new ErrorSource.CrookedFlight(new Alignment(5))).influences().get(0).words());
  }

  @ParameterizedTest
  @ValueSource(strings = {"limits", "k = 2", "k = 1.96"})
  void coverageReadsBack(String text) {
    assertEquals(text, Coverage.parse(text).toString());
    assertEquals(Coverage.parse(text), Coverage.parse(" " + text.replace(" ", "") + " "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2", "k = 0", "k = -2", "95 %", "k = 2,5", "Limits"})
  void refusesCoveragesThatSayNothing(String text) {
    assertThrows(QuantityException.class, () -> Coverage.parse(text));
  }

  @Test
  void refusesWhatMakesNoSense() {
    Length none = Length.parse("0 m");
    assertThrows(IllegalArgumentException.class, () -> new ReadingUncertainty(List.of()));
    assertThrows(IllegalArgumentException.class, () -> new ErrorSource.Spacing(none, none, ONE));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ErrorSource.GateJitter(SPACING, Duration.ofNanos(-1), ONE));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ErrorSource.ClockTick(SPACING, Duration.ofNanos(-1)));
    assertThrows(
        IllegalArgumentException.class, () -> new ErrorSource.Distance(none, Double.NaN, ONE));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ErrorSource.Repeatability(Speed.parse("1 m/s"), 1));
    assertThrows(IllegalArgumentException.class, () -> new Alignment(-1));
    assertThrows(IllegalArgumentException.class, () -> new Alignment(46));
    assertThrows(QuantityException.class, () -> Deviation.parse("2"));
  }
}
