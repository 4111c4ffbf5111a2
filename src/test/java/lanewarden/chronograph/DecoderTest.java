package lanewarden.chronograph;

import static lanewarden.chronograph.Collected.reasons;
import static lanewarden.chronograph.Collected.refusals;
import static lanewarden.chronograph.Collected.speeds;
import static lanewarden.chronograph.Profiles.MILLI;
import static lanewarden.chronograph.Profiles.good;
import static lanewarden.chronograph.Profiles.opened;
import static lanewarden.chronograph.Profiles.sentence;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecoderTest {
  private static List<Signal> plain(String... lines) {
    Decoder decoder = opened(Profiles.plainDecimal());
    List<Signal> signals = new ArrayList<>();
    long nanos = 0;
    for (String line : lines) {
      nanos += 5_000 * MILLI;
      signals.addAll(decoder.feed(RawBytes.ofText(line), nanos));
    }
    return signals;
  }

  private static List<Signal> timer(RawBytes... lines) {
    Decoder decoder = opened(Profiles.gateTimer());
    List<Signal> signals = new ArrayList<>();
    for (RawBytes line : lines) {
      signals.addAll(decoder.feed(line, 0));
    }
    return signals;
  }

  /** The gate timer's sentence with anything where the number should be. */
  private static List<Signal> looseTimer(String number, String gateTime) {
    String toml = Profiles.text("gate-timer");
    int from = toml.indexOf("(?<speed>");
    int to = toml.indexOf("),(?<unit>");
    SentenceProfile loose =
        Profiles.of(toml.substring(0, from) + "(?<speed>[^,]{1,12}" + toml.substring(to));
    RawBytes line = sentence("PLWT,00001," + number + ",F," + gateTime + ",A");
    return opened(loose).feed(line, 0);
  }

  @Test
  void aGoodLineBecomesAReadingWithAllThatBelongsToIt() {
    assertEquals(
        List.of(
            new Signal.Heard(
                new Reading(
                    Speed.parse("300.1 ft/s"),
                    good(42),
                    Source.SERIAL,
                    "test",
                    Profiles.NOON,
                    "00042"))),
        timer(good(42)));
  }

  @Test
  void aSpeedKeepsTheUnitOfItsLine() {
    // Own arithmetic: 0.6096 m at 91.44 m/s is 6666.67 µs
    assertEquals(List.of("91.44 m/s"), speeds(timer(sentence("PLWT,00001,091.44,M,006667,A"))));
  }

  @Test
  void aLineWithoutUnitHasTheUnitOfTheProfile() {
    assertEquals(List.of("299.8 ft/s"), speeds(plain("299.8\r\n")));
  }

  /** IEEE 488.2 numbers: NR1, NR2, NR3; the gate time is that of 150 ft/s, 13333 µs. */
  @ParameterizedTest
  @CsvSource({"+150, 150 ft/s", "150.0, 150.0 ft/s", "1.5E+2, 150 ft/s", "0150., 150 ft/s"})
  void numbersAreReadInEveryFormOfIeee4882(String number, String speed) {
    assertEquals(List.of(speed), speeds(looseTimer(number, "013333")));
  }

  @Test
  void refusesLineWithWrongChecksum() {
    RawBytes line = RawBytes.parse(good(1).escaped().replace("0300.1", "0300.2"));
    List<Signal> signals = timer(line);
    assertEquals(List.of(Reason.CHECKSUM), reasons(signals));
    assertEquals(line, refusals(signals).get(0).raw());
  }

  @Test
  void refusesLineThatIsNotTheSentence() {
    assertEquals(List.of(Reason.PATTERN), reasons(timer(RawBytes.ofText("hello\r\n"))));
  }

  @Test
  void refusesTwoLinesRunTogether() {
    RawBytes glued = RawBytes.parse(good(1).escaped().replace("\\r\\n", "")).then(good(2));
    assertEquals(List.of(Reason.PATTERN), reasons(timer(glued)));
    assertEquals(List.of(Reason.OVERLONG), reasons(plain("300.1299.8\r\n")));
  }

  @ParameterizedTest
  @CsvSource({"0300.1", "300.", "00.1", "300", "'300.1 '", "-300.1", "'300,1'", "3.0E2"})
  void refusesPlainDecimalOfAnotherWidthOrForm(String line) {
    List<Signal> signals = plain(line + "\r\n");
    assertEquals(List.of(), speeds(signals));
    assertEquals(1, refusals(signals).size());
  }

  @Test
  void refusesLineSentTwiceByItsNumber() {
    List<Signal> signals = timer(good(7), good(7), good(8));
    assertEquals(2, speeds(signals).size());
    assertEquals(List.of(Reason.REPEATED), reasons(signals));
  }

  @Test
  void refusesAnotherSpeedUnderANumberThatWasTaken() {
    List<Signal> signals = timer(good(7), sentence("PLWT,00007,0150.0,F,013333,A"));
    assertEquals(List.of("300.1 ft/s"), speeds(signals));
    assertEquals(List.of(Reason.REPEATED), reasons(signals));
  }

  @Test
  void aLineRefusedBeforeMayBeSentAgain() {
    RawBytes damaged = RawBytes.parse(good(7).escaped().replace("0300.1", "0309.1"));
    List<Signal> signals = timer(damaged, good(7));
    assertEquals(List.of(Reason.CHECKSUM), reasons(signals));
    assertEquals(List.of("300.1 ft/s"), speeds(signals));
  }

  @Test
  void refusesLineWithoutNumberThatFollowsTooSoonToBeAnotherArrow() {
    Decoder decoder = opened(Profiles.plainDecimal());
    List<Signal> signals = new ArrayList<>(decoder.feed(RawBytes.ofText("300.1\r\n300.1\r\n"), 0));
    signals.addAll(decoder.feed(RawBytes.ofText("300.1\r\n"), 999 * MILLI));
    signals.addAll(decoder.feed(RawBytes.ofText("300.1\r\n"), 1_000 * MILLI));
    assertEquals(2, speeds(signals).size());
    assertEquals(List.of(Reason.REPEATED, Reason.REPEATED), reasons(signals));
  }

  @Test
  void afterReopeningOnlyTheVerySameLineIsARepeat() {
    Decoder decoder = opened(Profiles.gateTimer());
    List<Signal> signals = new ArrayList<>(decoder.feed(good(1), 0));
    decoder.opened(10 * MILLI);
    signals.addAll(decoder.feed(good(1), 11 * MILLI));
    signals.addAll(decoder.feed(sentence("PLWT,00001,0150.0,F,013333,A"), 12 * MILLI));
    assertEquals(List.of("300.1 ft/s", "150.0 ft/s"), speeds(signals));
    assertEquals(List.of(Reason.REPEATED), reasons(signals));
  }

  /** SCPI-99 sentinels arrive as ordinary numbers and must never become a speed. */
  @ParameterizedTest
  @CsvSource({
    "9.91E37, NOT_A_NUMBER",
    "+9.910E+37, NOT_A_NUMBER",
    "9.9E37, OUT_OF_RANGE",
    "+9.9E+37, OUT_OF_RANGE",
    "-9.9E37, OUT_OF_RANGE",
    "-9.9000E+37, OUT_OF_RANGE",
    "-300.1, OUT_OF_RANGE",
    "0, OUT_OF_RANGE",
    "59.9, OUT_OF_RANGE",
    "500.1, OUT_OF_RANGE",
    "1E999, OUT_OF_RANGE",
    "1E-999, OUT_OF_RANGE",
    "--1, NOT_A_NUMBER",
    "., NOT_A_NUMBER",
    "1E9999, NOT_A_NUMBER",
    "3E, NOT_A_NUMBER"
  })
  void refusesWhatIsNoSpeedOfAnArrow(String number, Reason reason) {
    assertEquals(List.of(reason), reasons(looseTimer(number, "006664")));
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, NOT_A_NUMBER",
    "nan, NOT_A_NUMBER",
    "INF, OUT_OF_RANGE",
    "-INF, OUT_OF_RANGE",
    "NINF, OUT_OF_RANGE",
    "Infinity, OUT_OF_RANGE",
    "0x1p3, NOT_A_NUMBER"
  })
  void refusesWordsWhereTheNumberShouldBe(String word, Reason reason) {
    SentenceProfile loose =
        Profiles.of(
            Profiles.text("plain-decimal")
                .replace("(?<speed>[0-9]{3}\\.[0-9])", "(?<speed>.+)")
                .replace("longest = 5", "longest = 20")
                .replace("[simulator]\nline = \"{speed 3.1}\"", ""));
    assertEquals(List.of(reason), reasons(opened(loose).feed(RawBytes.ofText(word + "\r\n"), 0)));
  }

  @Test
  void refusesLineWhoseStatusIsNotGood() {
    assertEquals(List.of(Reason.STATUS), reasons(timer(sentence("PLWT,00001,0300.1,F,006664,W"))));
  }

  @Test
  void refusesUnitThatTheProfileDoesNotName() {
    assertEquals(List.of(Reason.UNIT), reasons(timer(sentence("PLWT,00001,0300.1,K,006664,A"))));
  }

  /** Own arithmetic: 609.6 mm at 300.1 ft/s is 6664.4 µs; 0.1 % of it is 6.7 µs. */
  @ParameterizedTest
  @CsvSource({"006658, 1", "006671, 1", "006657, 0", "006672, 0"})
  void refusesSpeedThatTheGateTimeContradicts(String gateTime, int heard) {
    List<Signal> signals = timer(sentence("PLWT,00001,0300.1,F," + gateTime + ",A"));
    assertEquals(heard, speeds(signals).size());
    assertEquals(heard == 1 ? List.of() : List.of(Reason.GATES), reasons(signals));
  }

  @Test
  void refusesAGateTimeOfZeroAsGatesReversed() {
    assertEquals(
        List.of(Reason.REVERSED), reasons(timer(sentence("PLWT,00001,0300.1,F,000000,A"))));
  }

  @Test
  void refusesOverlongLineWithItsBytesAndHearsTheNext() {
    RawBytes flood = RawBytes.ofText("$" + "x".repeat(90) + "\r\n");
    List<Signal> signals = timer(flood, good(1));
    assertEquals(List.of(Reason.OVERLONG), reasons(signals));
    assertEquals(flood, refusals(signals).get(0).raw());
    assertEquals(1, speeds(signals).size());
  }

  @Test
  void refusesHalfALineAfterSilence() {
    Decoder decoder = opened(Profiles.gateTimer());
    decoder.feed(RawBytes.ofText("$PLWT,000"), 0);
    List<Signal> signals = decoder.idle(250 * MILLI);
    assertEquals(List.of(Reason.TORN), reasons(signals));
    assertEquals("$PLWT,000", refusals(signals).get(0).raw().escaped());
  }

  @Test
  void refusesHalfALineAtTheLossOfTheLink() {
    Decoder decoder = opened(Profiles.gateTimer());
    decoder.feed(RawBytes.ofText("$PLWT,000"), 0);
    assertEquals(List.of(Reason.TORN), reasons(decoder.lost(1)));
  }

  @Test
  void theTailOfATornLineIsNoReadingEvenIfItLooksLikeOne() {
    Decoder decoder = opened(Profiles.plainDecimal());
    decoder.feed(RawBytes.ofText("1"), 0);
    List<Signal> signals = new ArrayList<>(decoder.idle(300 * MILLI));
    signals.addAll(decoder.feed(RawBytes.ofText("300.1\r\n"), 301 * MILLI));
    assertEquals(List.of(Reason.TORN, Reason.TORN), reasons(signals));
    assertEquals(List.of(), speeds(signals));
  }

  @Test
  void theFirstLineAfterOpeningCountsIfChecksumAndStartProveItWhole() {
    Decoder decoder = new Decoder(Profiles.gateTimer(), Source.SERIAL, "test", Profiles.CLOCK);
    decoder.opened(0);
    assertEquals(List.of("300.1 ft/s"), speeds(decoder.feed(good(1), 1)));
  }

  @Test
  void theFirstLineAfterOpeningIsTornIfNothingProvesItWhole() {
    Decoder decoder = new Decoder(Profiles.plainDecimal(), Source.SERIAL, "test", Profiles.CLOCK);
    decoder.opened(0);
    List<Signal> signals = decoder.feed(RawBytes.ofText("300.1\r\n300.2\r\n"), 1);
    assertEquals(List.of(Reason.TORN), reasons(signals));
    assertEquals(List.of("300.2 ft/s"), speeds(signals));
  }

  @Test
  void aLineJoinedMidwayIsTornWhateverElseIsWrongWithIt() {
    Decoder decoder = new Decoder(Profiles.gateTimer(), Source.SERIAL, "test", Profiles.CLOCK);
    decoder.opened(0);
    assertEquals(List.of(Reason.TORN), reasons(decoder.feed(RawBytes.ofText("064,A*1C\r\n"), 1)));
  }

  @Test
  void aSumGuardsALineLikeAnExclusiveOr() {
    SentenceProfile summed =
        Profiles.of(
            Profiles.text("gate-timer").replace("checksum = \"xor\"", "checksum = \"sum\""));
    String covered = "PLWT,00001,0300.1,F,006664,A";
    String line = "$" + covered + "*" + Checksum.SUM.hex(covered) + "\r\n";
    assertEquals(1, speeds(opened(summed).feed(RawBytes.ofText(line), 0)).size());
    assertEquals(
        List.of(Reason.CHECKSUM),
        reasons(opened(summed).feed(RawBytes.ofText(line.replace("00001", "00002")), 0)));
  }

  @Test
  void refusalsSayWhatHappenedAndWhatToDo() {
    for (Refusal refusal :
        refusals(
            timer(
                RawBytes.ofText("hello\r\n"),
                sentence("PLWT,00001,0300.1,F,006664,W"),
                sentence("PLWT,00001,9.91E37,F,006664,A")))) {
      assertTrue(refusal.words().contains("hoot again"), refusal.words());
    }
  }
}
