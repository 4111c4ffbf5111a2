package lanewarden.chronograph;

import static lanewarden.chronograph.Collected.reasons;
import static lanewarden.chronograph.Collected.refusals;
import static lanewarden.chronograph.Collected.speeds;
import static lanewarden.chronograph.Profiles.opened;
import static lanewarden.chronograph.Profiles.passed;
import static lanewarden.chronograph.Profiles.sentence;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that say when the arrow passed the gates, read through whole profiles. */
class GateTimesTest {
  private static final int RANGE = 65_536;
  private static final String MOMENTS =
      "(?<at1>[0-9]{5}),(?<at2>[0-9]{5}),(?<at3>[0-9]{5}),(?<status>";

  private static List<Signal> three(int at1, int at2, int at3) {
    return opened(Profiles.threeGateTimer()).feed(passed(1, at1, at2, at3), 0);
  }

  /** The three-gate timer with other fields in the place of its moments, and no simulator. */
  private static String withFields(String fields) {
    String toml = Profiles.text("three-gate-timer");
    return toml.substring(0, toml.indexOf("[simulator]")).replace(MOMENTS, fields + ",(?<status>");
  }

  /** Two gates 609.6 mm apart whose timer says the time between them, or their moments. */
  private static List<Signal> two(String fields, String clock, String unit, String said) {
    String toml =
        withFields(fields)
                .replaceFirst("(?s)\\[clock].*", "")
                .replace("unit = \"ft/s\"", "unit = \"" + unit + "\"")
            + clock.replace(';', '\n')
            + "\n[[gate]]\nspacing = \"609.6 mm\"\n";
    return opened(Profiles.of(toml)).feed(sentence("PLWG,00001," + said + ",A"), 0);
  }

  /** Own algebra: 0.6096 m are 2 ft; 2 ft in 6667 µs are 299.98500 ft/s or 91.435428 m/s. */
  @ParameterizedTest
  @CsvSource({
    "6667, ft/s, 299.985 ft/s",
    "6667, m/s, 91.4354 m/s",
    "6664, ft/s, 300.120 ft/s",
    "4000, ft/s, 500.000 ft/s",
    "33333, ft/s, 60.0006 ft/s",
    "6666.6666666666666667, m/s, 91.4400 m/s"
  })
  void theSpeedIsSpacingByTime(String micros, String unit, String speed) {
    assertEquals(List.of(speed), speeds(two("(?<gate1>[0-9.]+)", "", unit, micros)));
  }

  /** 16 MHz make a tick of 62.5 ns; 6664 µs are 106,624 of them. */
  @ParameterizedTest
  @CsvSource({
    "tick = \"62.5 ns\", '0,106624'",
    "tick = \"62.5 ns\";rolls_over = 4294967296, '4294967295,106623'",
    "tick = \"0.001 ms\", '100,6764'",
    "tick = \"1us\", '100,6764'"
  })
  void countsOfAnyClockAreTimes(String clock, String said) {
    assertEquals(
        List.of("300.120 ft/s"),
        speeds(two("(?<at1>[0-9]+),(?<at2>[0-9]+)", "[clock];" + clock, "ft/s", said)));
  }

  /** The last case is what an instrument says that subtracts across its own roll-over. */
  @ParameterizedTest
  @CsvSource({"6664, 300.120 ft/s", "-63336, 300.120 ft/s"})
  void aTimeBetweenGatesMayBeTakenAcrossTheRollOver(String said, String speed) {
    assertEquals(
        List.of(speed),
        speeds(
            two("(?<gate1>-?[0-9]+)", "[clock];tick = \"1 µs\";rolls_over = 70000", "ft/s", said)));
  }

  @Test
  void theClockMayRollOverAtAnyCount() throws Misread {
    GateTimes gates = Profiles.threeGateTimer().form().gates();
    for (int at = 0; at < RANGE; at++) {
      int start = at;
      List<Passage> passages =
          gates.passages(
              field -> {
                int gate = field.charAt(2) - '1';
                return Optional.of(String.valueOf((start + gate * 3_332) % RANGE));
              });
      gates.agree(passages, SpeedUnit.FEET_PER_SECOND);
      Speed speed = GateTimes.speed(passages, SpeedUnit.FEET_PER_SECOND);
      assertEquals(Speed.parse("300.120 ft/s"), speed, "from " + at);
    }
  }

  @Test
  void threeGatesGiveTheSpeedOverTheWholeWay() {
    // Own algebra: 1 ft in 3330 µs and in 3334 µs differ by 0.12 %; 2 ft in 6664 µs
    assertEquals(List.of("300.120 ft/s"), speeds(three(0, 3_330, 6_664)));
  }

  /** Own algebra: of 3000 µs, 0.5 % are 15 µs; the spacings are equal. */
  @ParameterizedTest
  @CsvSource({"3015, 1", "2985, 1", "3016, 0", "2984, 0"})
  void theTwoSpeedsOfThreeGatesMustAgree(int second, int heard) {
    List<Signal> signals = three(65_000, 68_000 - RANGE, 68_000 - RANGE + second);
    assertEquals(heard, speeds(signals).size());
    assertEquals(heard == 1 ? List.of() : List.of(Reason.GATES), reasons(signals));
  }

  @Test
  void theRefusalSaysBothSpeeds() {
    assertEquals(
        "333.333 ft/s from gate 1 to gate 2 and 331.565 ft/s from gate 2 to gate 3 differ by more"
            + " than 0.5 %: a gate was triggered by something else. Shoot again.",
        refusals(three(0, 3_000, 6_016)).get(0).words());
  }

  /** Half of the range is 32,768 counts; 32,767 are still seen, as an arrow that is too slow. */
  @ParameterizedTest
  @CsvSource({
    "6664, 3332, 0, REVERSED",
    "0, 0, 3332, REVERSED",
    "0, 3332, 3332, REVERSED",
    "3332, 0, 6664, REVERSED",
    "0, 6664, 3332, REVERSED",
    "1000, 64000, 61000, REVERSED",
    "0, 32768, 36000, REVERSED",
    "0, 32767, 65534, OUT_OF_RANGE",
    "0, 65536, 70000, OUT_OF_RANGE",
    "0, 610, 1219, OUT_OF_RANGE"
  })
  void refusesMomentsThatNoArrowHas(int at1, int at2, int at3, Reason reason) {
    assertEquals(List.of(reason), reasons(three(at1, at2, at3)));
  }

  @Test
  void withoutRollOverAnyLaterMomentIsLaterAndAnyEarlierIsReversed() {
    String fields = "(?<at1>[0-9]+),(?<at2>[0-9]+)";
    String clock = "[clock];tick = \"1 ns\"";
    assertEquals(List.of("60.0000 ft/s"), speeds(two(fields, clock, "ft/s", "7,33333340")));
    assertEquals(List.of(Reason.REVERSED), reasons(two(fields, clock, "ft/s", "6664001,1")));
  }

  @ParameterizedTest
  @CsvSource({
    "-----, NOT_A_NUMBER",
    "9.91E37, NOT_A_NUMBER",
    "INF, OUT_OF_RANGE",
    "9.9E37, OUT_OF_RANGE",
    "-3332, OUT_OF_RANGE",
    "1E999, OUT_OF_RANGE"
  })
  void refusesWhatIsNoCountOfTheClock(String said, Reason reason) {
    SentenceProfile loose = Profiles.of(withFields("(?<at1>[0-9]+),(?<at2>[^,]+),(?<at3>[0-9]+)"));
    assertEquals(
        List.of(reason),
        reasons(opened(loose).feed(sentence("PLWG,00001,0," + said + ",6664,A"), 0)));
  }

  /**
   * With a speed in the line, each way must agree with it (0.5 % here), and both with each other.
   */
  @ParameterizedTest
  @CsvSource({
    "300.1, 0, 3332, 6664, 1",
    "300.1, 0, 3316, 6632, 1",
    "300.1, 0, 3315, 6630, 0",
    "300.1, 0, 3332, 6690, 0",
    "300.1, 0, 3320, 6664, 0"
  })
  void aSpeedInTheLineMustAgreeToo(String speed, int at1, int at2, int at3, int heard) {
    SentenceProfile saying =
        Profiles.of(
            withFields("(?<speed>[0-9.]+),(?<at1>[0-9]{5}),(?<at2>[0-9]{5}),(?<at3>[0-9]{5})")
                .replaceFirst(
                    "spacing = \"304.8 mm\"", "spacing = \"304.8 mm\"\nagree = \"0.5 %\""));
    RawBytes line = sentence("PLWG,00001,%s,%05d,%05d,%05d,A".formatted(speed, at1, at2, at3));
    List<Signal> signals = opened(saying).feed(line, 0);
    assertEquals(heard == 1 ? List.of("300.1 ft/s") : List.of(), speeds(signals));
    assertEquals(heard == 1 ? List.of() : List.of(Reason.GATES), reasons(signals));
  }

  /** Checked by multiplication, without the division that made it. */
  @Test
  void anyGateTimesGiveSpacingByTimeToTheLastDecimal() {
    Random random = new Random(4);
    for (int round = 0; round < 20_000; round++) {
      BigDecimal metres = BigDecimal.valueOf(1 + random.nextInt(5_000_000), 4 + random.nextInt(3));
      BigDecimal seconds =
          BigDecimal.valueOf(1 + random.nextInt(90_000_000), 6 + random.nextInt(4));
      SpeedUnit unit = SpeedUnit.values()[random.nextInt(SpeedUnit.values().length)];
      Speed speed = new Passage(metres, seconds).speed(unit);
      BigDecimal off = speed.si().multiply(seconds).subtract(metres).abs();
      BigDecimal half =
          new BigDecimal("0.5").movePointLeft(speed.value().scale()).multiply(unit.inSi());
      assertTrue(off.compareTo(half.multiply(seconds)) <= 0, metres + " m in " + seconds + " s");
      assertTrue(speed.value().scale() >= 2, speed.toString());
      assertTrue(speed.value().precision() >= 6, speed.toString());
    }
  }

  @Test
  void twoSpeedsAgreeExactlyUpToTheShareAndNotBeyond() {
    Passage way = new Passage(new BigDecimal("0.3048"), new BigDecimal("0.003"));
    Percent third = Percent.parse("0.333333333333 %");
    BigDecimal metres = new BigDecimal("0.3048");
    BigDecimal edge = metres.add(metres.multiply(third.fraction())).divide(new BigDecimal("0.003"));
    Passage most = new Passage(edge, BigDecimal.ONE);
    assertTrue(way.agrees(most, third));
    BigDecimal hair = new BigDecimal("1E-30");
    assertFalse(way.agrees(new Passage(edge.add(hair), BigDecimal.ONE), third));
  }

  @Test
  void theSimulatorWritesMomentsOfAClockThatRunsOnAndRollsOver() throws InterruptedException {
    Collected heard = new Collected();
    SentenceProfile profile = Profiles.threeGateTimer();
    try (SimulatedInstrument simulator = new SimulatedInstrument(profile, Profiles.CLOCK)) {
      simulator.start(heard);
      for (int shot = 0; shot < 200; shot++) {
        simulator.shoot(Speed.parse("300 ft/s"));
      }
      simulator.settle();
    }
    // Own algebra: 1 ft takes 3333.3 µs, 2 ft 6666.7 µs: 3333 and 6667 counts
    assertEquals(200, heard.speeds().size(), heard.refusals().toString());
    assertEquals(List.of("299.985 ft/s"), heard.speeds().stream().distinct().toList());
    assertTrue(
        heard.signals().stream()
            .filter(Signal.Heard.class::isInstance)
            .map(signal -> ((Signal.Heard) signal).reading().raw().characters().split(",", -1))
            .anyMatch(fields -> fields[2].compareTo(fields[4]) > 0),
        "the clock rolled over between the gates of at least one shot");
  }
}
