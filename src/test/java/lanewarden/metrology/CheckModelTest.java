package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import lanewarden.metrology.DecidingFigure.Mean;
import lanewarden.metrology.DecidingFigure.MiddlePair;
import lanewarden.metrology.DecidingFigure.Ranked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CheckModelTest {
  private static final CheckModel PLAIN =
      SampleModels.plain(DecidingFigure.mean(3), new Dispersion(0.3, 0.1, 0.1));

  @Test
  void sameFigureHasOneForm() {
    assertEquals(new Ranked(1, 1), DecidingFigure.mean(1));
    assertEquals(new Ranked(1, 1), DecidingFigure.median(1));
    assertEquals(new Ranked(1, 1), DecidingFigure.highest(1));
    assertEquals(new Ranked(2, 3), DecidingFigure.median(3));
    assertEquals(new Ranked(2, 3), DecidingFigure.withinCount(2, 3));
    assertEquals(new Ranked(1, 3), DecidingFigure.firstWithin(3));
    assertEquals(new Mean(2), DecidingFigure.median(2));
    assertEquals(new MiddlePair(4), DecidingFigure.median(4));
  }

  static Stream<Arguments> senseless() {
    return Stream.of(
        refusal("0 readings", () -> DecidingFigure.mean(0)),
        refusal("too many", () -> DecidingFigure.highest(101)),
        refusal("place 4 of 3", () -> DecidingFigure.withinCount(4, 3)),
        refusal("place 0", () -> DecidingFigure.withinCount(0, 3)),
        refusal("odd pair", () -> new MiddlePair(5)),
        refusal("no threshold", () -> new Threshold(0, true)),
        refusal("NaN threshold", () -> new Threshold(Double.NaN, true)),
        refusal("infinite threshold", () -> new Threshold(Double.POSITIVE_INFINITY, true)),
        refusal("no shots", () -> new ShotAllowance(0, 0, 0)),
        refusal("negative voids", () -> new ShotAllowance(1, -1, 0)),
        refusal("always void", () -> new ShotAllowance(1, 0, 1)),
        refusal("negative chance", () -> new ShotAllowance(1, 0, -0.1)),
        refusal("NaN chance", () -> new ShotAllowance(1, 0, Double.NaN)),
        refusal("negative scatter", () -> new Dispersion(-1, 0, 0)),
        refusal("NaN uncertainty", () -> new Dispersion(0, Double.NaN, 0)),
        refusal("infinite calibration", () -> new Dispersion(0, 0, Double.POSITIVE_INFINITY)),
        refusal("step without rounding", () -> new ReadingRounding(ReadingRounding.Way.NONE, 1)),
        refusal("rounding without step", () -> new ReadingRounding(ReadingRounding.Way.DOWN, 0)),
        refusal("negative spread", () -> SampleModels.withSpread(PLAIN, -1)),
        refusal("no spread at all", () -> SampleModels.withSpread(PLAIN, 0)),
        refusal("few shots", () -> SampleModels.withShots(PLAIN, new ShotAllowance(2, 0, 0))),
        refusal("negative re-checks", () -> SampleModels.withRechecks(PLAIN, -1)),
        refusal("no archers", () -> new OperatingCharacteristic(PLAIN, 0, 1)),
        refusal("nobody drawn", () -> new CheckSimulation(PLAIN).at(90, 0, 1)));
  }

  private static Arguments refusal(String what, Executable making) {
    return Arguments.of(what, making);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("senseless")
  void refusesWhatMakesNoSense(String what, Executable making) {
    IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, making);
    assertTrue(String.valueOf(refused.getMessage()).length() > 20, refused.getMessage());
  }
}
