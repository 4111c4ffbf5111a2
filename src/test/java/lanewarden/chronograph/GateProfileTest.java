package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Profiles whose gates, clock and fields do not fit together. */
class GateProfileTest {
  private static List<WrittenFault> faults(String toml) {
    return assertThrows(
            WrittenRefused.class,
            () -> SentenceProfile.read("p.toml", toml.getBytes(StandardCharsets.UTF_8)))
        .faults();
  }

  private static String timer() {
    return Profiles.text("three-gate-timer");
  }

  /** One fault each: what is replaced, by what, what the fault expected and how to mend it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "tick = \"1 µs\" | tick = \"1 s\" | how long one count lasts | ns, µs or ms",
        "tick = \"1 µs\" | tick = \"0 µs\" | how long one count lasts | above zero",
        "tick = \"1 µs\" | tack = \"1 µs\" | one of | did you mean tick?",
        "rolls_over = 65536 | rolls_over = 1 | a whole number from 2 | rolls_over",
        "rolls_over = 65536 | rolls_over = 33333 | at least 33334 counts | wrong order",
        "least = \"60 ft/s\" | least = \"0 ft/s\" | above zero, where the clock | raise least",
        "(?<at1> | (?<gate1> | gate1 …) or moments | keep one kind",
        "(?<at3> | (?: | a group named at3 | (?<at3>…)",
        "(?<at3>[0-9]{5}) | (?<at3>[0-9]{5})(?<at4>) | groups named at1, at2, at3 | did you mean",
        "[[gate]] | [[gate]]\\nspacing = \"1 m\"\\n[[gate]] | at most 2 tables | take out",
        "spacing = \"304.8 mm\" | spacing = \"304.8 mm\"\\nagree = \"1 %\" | left out | take it out",
        "agree = \"0.5 %\" | # | may differ | add agree",
        "spacing = \"304.8 mm\" | spacing = \"0 mm\" | above zero | from gate to gate",
        "(?<sequence>[0-9]{5}) | (?<unit>[0-9]{5}) | a group named speed beside | (?<speed>…)",
        "unit = \"ft/s\" | # | the unit, because | add unit",
        "{at3 5} | {at4 5} | a line that | use speed, sequence, unit, status, checksum, at1, at2, at3",
        "{at3 5} | {at3 3} | a line that | needs more than 3 digits"
      })
  void refusesFaultWithWhatItExpectedAndItsMend(
      String piece, String instead, String expected, String mend) {
    String faulty =
        timer()
            .replaceFirst(
                java.util.regex.Pattern.quote(piece),
                java.util.regex.Matcher.quoteReplacement(instead.replace("\\n", "\n")));
    List<WrittenFault> faults = faults(faulty);
    assertTrue(
        faults.stream()
            .anyMatch(
                f ->
                    f.expected().toString().contains(expected)
                        && f.mend().toString().contains(mend)),
        faults::toString);
  }

  @Test
  void theClockMustOutlastTheSlowestArrowTwiceAndNoMore() {
    // Own algebra: 304.8 mm at 60 ft/s take 16,666.67 µs, twice that is 33,333.33
    Profiles.of(timer().replace("rolls_over = 65536", "rolls_over = 33334"));
    assertEquals(
        "at least 33334 counts: more than twice what an arrow at 60 ft/s takes over 304.8 mm",
        faults(timer().replace("rolls_over = 65536", "rolls_over = 33333"))
            .get(0)
            .expected()
            .toString());
  }

  @Test
  void momentsNeedTheirClock() {
    List<WrittenFault> faults =
        faults(timer().replace("[clock]\ntick = \"1 µs\"\nrolls_over = 65536\n", ""));
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(
        faults.get(0).mend().toString().contains("add a section [clock] with tick = \"1 µs\""));
  }

  @Test
  void aClockThatNothingIsCountedByIsRefused() {
    List<WrittenFault> faults =
        faults(Profiles.text("plain-decimal") + "\n[clock]\ntick = \"1 µs\"\n");
    assertEquals(1, faults.size(), faults.toString());
    assertEquals("take it out", faults.get(0).mend().toString());
  }

  @Test
  void aLineWithNeitherSpeedNorGateTimesIsRefused() {
    List<WrittenFault> faults = faults(Profiles.text("plain-decimal").replace("(?<speed>", "(?:"));
    assertEquals(1, faults.size(), faults.toString());
    assertEquals("a group named speed, or gate times", faults.get(0).expected().toString());
    assertTrue(faults.get(0).mend().toString().contains("(?<at1>…) and (?<at2>…)"));
  }

  @Test
  void aClockTooCoarseForTheSimulatorsArrowIsRefused() {
    List<WrittenFault> faults = faults(timer().replace("tick = \"1 µs\"", "tick = \"100 ms\""));
    assertTrue(
        faults.get(0).mend().toString().contains("let the clock count faster"), faults::toString);
  }

  @Test
  void theTickIsOneMicrosecondUnlessSaid() {
    SentenceProfile profile = Profiles.of(timer().replace("tick = \"1 µs\"\n", ""));
    List<Signal> signals = Profiles.opened(profile).feed(Profiles.passed(1, 0, 3_332, 6_664), 0);
    assertEquals(List.of("300.120 ft/s"), Collected.speeds(signals));
  }
}
