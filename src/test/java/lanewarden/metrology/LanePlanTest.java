package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LanePlanTest {

  /** Erlang C: 2 servers, 1 erlang → 1/3; 3 servers, 2 erlang → 4/9. */
  @ParameterizedTest
  @CsvSource({"2, 1, 0.333333333333", "3, 2, 0.444444444444", "1, 0.7, 0.7", "5, 0, 0"})
  void waitingIsErlangs(int lanes, double load, double probability) {
    assertEquals(probability, WaitingLine.erlangC(lanes, load), 1e-11);
  }

  /** Line arithmetic: 280 archers in 60 minutes on one lane leaves 12.9 s each. */
  @Test
  void hourForTwoHundredAndEightyArchersLeavesThirteenSecondsEach() {
    LanePlan plan = new LanePlan(280, 60, 3, 5, 10, 1);
    assertEquals(12.9, plan.secondsAvailable(), 0.05);
    assertEquals(25, plan.secondsACheck(), 1e-12);
    assertEquals(144, plan.capacity());
    assertEquals(1.944, plan.utilisation(), 0.001);
    assertEquals(new WaitingLine.Growing(2), plan.line());
  }

  /** Own arithmetic: 288 in an hour, 25 s each, are a load of 2: no two lanes can cope. */
  @Test
  void lanesThatNeverRestCannotCope() {
    assertEquals(new WaitingLine.Growing(3), new LanePlan(288, 60, 3, 5, 10, 2).line());
    WaitingLine.Steady line =
        assertInstanceOf(WaitingLine.Steady.class, new LanePlan(288, 60, 3, 5, 10, 3).line());
    assertEquals(4.0 / 9, line.probability(), 1e-12);
    assertEquals(4.0 / 9 * 25, line.meanSeconds(), 1e-9);
    assertEquals(8.0 / 9, line.meanLength(), 1e-9);
  }

  /** A check that takes a whole number of times in the hour is not lost to binary fractions. */
  @Test
  void capacityIsOfWholeChecks() {
    assertEquals(12_000, new LanePlan(1, 60, 3, 0.1, 0, 1).capacity());
    assertEquals(2 * 138, new LanePlan(1, 60, 4, 4, 10, 2).capacity());
  }

  static Stream<LanePlan> steady() {
    Random random = new Random(11);
    return Stream.generate(
            () ->
                new LanePlan(
                    1 + random.nextInt(400),
                    10 + random.nextInt(300),
                    1 + 4 * random.nextDouble(),
                    1 + 20 * random.nextDouble(),
                    30 * random.nextDouble(),
                    1 + random.nextInt(8)))
        .filter(plan -> plan.utilisation() < 0.97)
        .limit(200);
  }

  /** Little's law, L = λW, with L from the balance of arrivals and departures state by state. */
  @ParameterizedTest
  @MethodSource("steady")
  void lineIsAsLongAsArrivalsTimesWaiting(LanePlan plan) {
    WaitingLine.Steady line = assertInstanceOf(WaitingLine.Steady.class, plan.line());
    double arrivals = plan.competitors() / (plan.minutes() * 60);
    double state = 1;
    double all = 0;
    double waiting = 0;
    double queued = 0;
    for (int present = 0; present < 5000; present++) {
      all += state;
      if (present >= plan.lanes()) {
        waiting += state;
        queued += (present - plan.lanes()) * state;
      }
      state *= arrivals * plan.secondsACheck() / Math.min(present + 1, plan.lanes());
    }
    assertEquals(waiting / all, line.probability(), 1e-9);
    assertEquals(queued / all, arrivals * line.meanSeconds(), 1e-9 * (1 + queued / all));
    assertEquals(queued / all, line.meanLength(), 1e-9 * (1 + queued / all));
  }

  @ParameterizedTest
  @MethodSource("steady")
  void oneMoreLaneShortensTheWaiting(LanePlan plan) {
    LanePlan wider =
        new LanePlan(
            plan.competitors(),
            plan.minutes(),
            plan.shots(),
            plan.secondsAShot(),
            plan.secondsAChange(),
            plan.lanes() + 1);
    WaitingLine.Steady before = (WaitingLine.Steady) plan.line();
    WaitingLine.Steady after = (WaitingLine.Steady) wider.line();
    assertTrue(after.meanSeconds() < before.meanSeconds());
    assertTrue(plan.lanes() >= plan.lanesNeeded());
  }

  static Stream<Arguments> senseless() {
    return Stream.of(
        refusal("nobody", () -> new LanePlan(0, 60, 3, 5, 10, 1)),
        refusal("no time", () -> new LanePlan(1, 0, 3, 5, 10, 1)),
        refusal("no shots", () -> new LanePlan(1, 60, 0, 5, 10, 1)),
        refusal("no time for a shot", () -> new LanePlan(1, 60, 3, Double.NaN, 10, 1)),
        refusal("negative change", () -> new LanePlan(1, 60, 3, 5, -1, 1)),
        refusal("no lane", () -> new LanePlan(1, 60, 3, 5, 10, 0)),
        refusal("101 lanes", () -> new LanePlan(1, 60, 3, 5, 10, 101)),
        refusal("overload", () -> WaitingLine.erlangC(2, 2)),
        refusal("no server", () -> WaitingLine.erlangC(0, 0)),
        refusal("negative load", () -> WaitingLine.erlangC(1, -1)));
  }

  private static Arguments refusal(String what, Executable making) {
    return Arguments.of(what, making);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("senseless")
  void refusesWhatMakesNoSense(String what, Executable making) {
    assertThrows(IllegalArgumentException.class, making);
  }
}
