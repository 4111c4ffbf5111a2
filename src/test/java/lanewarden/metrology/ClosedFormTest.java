package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClosedFormTest {
  private static final int ARCHERS = 60_000;

  static Stream<CheckModel> models() {
    return SampleModels.many(12, model -> ClosedForm.of(model).isPresent()).stream();
  }

  @ParameterizedTest
  @MethodSource("models")
  void agreesWithReadingsDrawnShotByShot(CheckModel model) {
    ClosedForm closed = ClosedForm.of(model).orElseThrow();
    CheckSimulation simulation = new CheckSimulation(model);
    for (double offset : new double[] {-0.9, -0.25, 0, 0.1, 0.4}) {
      double speed = SampleModels.THRESHOLD + offset;
      CurvePoint exact = closed.at(speed);
      CurvePoint drawn = simulation.at(speed, ARCHERS, 7);
      assertAgree(exact.firstCheck(), drawn.firstCheck(), "first check at " + speed);
      assertAgree(exact.ending(), drawn.ending(), "ending at " + speed);
    }
  }

  private static void assertAgree(Chances exact, Chances drawn, String where) {
    assertAgree(exact.within(), drawn.within(), where + ", within");
    assertAgree(exact.over(), drawn.over(), where + ", over");
    assertAgree(exact.notDecided(), drawn.notDecided(), where + ", not decided");
  }

  private static void assertAgree(double exact, double drawn, String where) {
    double error = Math.sqrt(Math.max(exact * (1 - exact), 1.0 / ARCHERS) / ARCHERS);
    assertTrue(
        Math.abs(exact - drawn) <= 4.5 * error,
        () -> where + ": exact " + exact + ", drawn " + drawn + ", standard error " + error);
  }

  @Test
  void gridHasEveryKindOfClause() {
    List<CheckModel> models = models().toList();
    for (ReadingRounding.Way way : ReadingRounding.Way.values()) {
      assertTrue(models.stream().anyMatch(m -> m.rounding().way() == way), "" + way);
    }
    assertTrue(models.stream().anyMatch(m -> m.spread().isPresent()));
    assertTrue(models.stream().anyMatch(m -> m.shots().voidChance() > 0));
  }

  /** Own algebra: a mean of n scatters with √(calibration² + each²/n). */
  @Test
  void meanIsOneNormalDistributionOfBothErrors() {
    for (double calibration : new double[] {0, 0.01, 0.02, 0.05, 0.1, 0.3, 3, 300}) {
      Dispersion dispersion = new Dispersion(0.3, 0.1, calibration);
      ClosedForm closed =
          ClosedForm.of(SampleModels.plain(DecidingFigure.mean(3), dispersion)).orElseThrow();
      double both = Math.sqrt(calibration * calibration + 0.1 / 3);
      for (double offset = -1; offset <= 1; offset += 0.05) {
        double expected = Bell.above(offset / both);
        double within = closed.at(SampleModels.THRESHOLD + offset).firstCheck().within();
        assertEquals(expected, within, 2e-7, "calibration " + calibration + ", " + offset);
      }
    }
  }

  /** Highest of n on a common error is an equicorrelated normal orthant: 1/(n + 1) at ρ = 1/2. */
  @Test
  void highestAtTheThresholdIsOneInEveryPlaceAlike() {
    for (int n = 1; n <= 20; n++) {
      ClosedForm closed =
          ClosedForm.of(SampleModels.plain(DecidingFigure.highest(n), new Dispersion(0.2, 0, 0.2)))
              .orElseThrow();
      Chances chances = closed.at(SampleModels.THRESHOLD).firstCheck();
      assertEquals(1.0 / (n + 1), chances.within(), 1e-6, n + " readings");
    }
  }

  @Test
  void thereIsNoneWhereRoundedReadingsAreAveraged() {
    CheckModel mean = SampleModels.plain(DecidingFigure.mean(3), new Dispersion(0.3, 0, 0));
    CheckModel pair = SampleModels.plain(DecidingFigure.median(4), new Dispersion(0.3, 0, 0));
    ReadingRounding feet = new ReadingRounding(ReadingRounding.Way.NEAREST, 0.3048);
    assertTrue(ClosedForm.of(SampleModels.withRounding(mean, feet)).isEmpty());
    assertTrue(ClosedForm.of(SampleModels.withRounding(pair, feet)).isEmpty());
    assertTrue(ClosedForm.of(SampleModels.withSpread(pair, 0.5)).isEmpty());
  }
}
