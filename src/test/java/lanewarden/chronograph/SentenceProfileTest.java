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

class SentenceProfileTest {
  private static List<WrittenFault> faults(String toml) {
    WrittenRefused refused =
        assertThrows(
            WrittenRefused.class,
            () -> SentenceProfile.read("p.toml", toml.getBytes(StandardCharsets.UTF_8)));
    return refused.faults();
  }

  private static String gateTimer() {
    return Profiles.text("gate-timer");
  }

  private static int lineOf(String toml, String piece) {
    return (int) toml.substring(0, toml.indexOf(piece)).chars().filter(c -> c == '\n').count() + 1;
  }

  @Test
  void readsTheExampleProfiles() {
    SentenceProfile timer = Profiles.gateTimer();
    assertEquals("Gate timer", timer.name());
    assertEquals("60 ft/s to 500 ft/s", timer.plausible().toString());
    assertEquals("9600 8N1", timer.port().toString());
    assertEquals(Profiles.text("gate-timer"), timer.text());
    assertEquals("Plain decimal", Profiles.plainDecimal().name());
  }

  @ParameterizedTest
  @CsvSource({
    "gate-timer, 300.1 ft/s",
    "plain-decimal, 300.1 ft/s",
    "three-gate-timer, 300.120 ft/s"
  })
  void theExampleInTheHeadOfEachExampleProfileIsReadByIt(String name, String speed) {
    SentenceProfile profile = Profiles.of(Profiles.text(name));
    String example =
        Profiles.text(name)
            .lines()
            .filter(line -> line.matches("#   [$]PLW[TG],0.*") || line.startsWith("#   3"))
            .findFirst()
            .orElseThrow()
            .substring(4);
    List<Signal> signals = Profiles.opened(profile).feed(RawBytes.ofText(example + "\r\n"), 0);
    assertEquals(List.of(speed), Collected.speeds(signals), example);
  }

  /** One fault each: what is replaced, by what, where the fault is told, what its mend holds. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "format = 1 | format = 2 | format = 2 | format = 1",
        "baud = 9600 | baud = \"fast\" | baud = \"fast\" | without quotes",
        "data_bits = 8 | data_bits = 9 | data_bits = 9 | data_bits",
        "parity = \"none\" | parity = \"od\" | parity = \"od\" | did you mean \"odd\"?",
        "flow = \"none\" | flow = \"rtscts\" | flow = \"rtscts\" | did you mean \"rts/cts\"?",
        "terminator = \"\\r\\n\" | terminator = \"\" | terminator = \"\" | 1 to 4 ASCII characters",
        "longest = 80 | longest = 0 | longest = 0 | longest",
        "silence_ms = 250 | silence_m = 250 | silence_m = 250 | did you mean silence_ms?",
        "(?<covered> | (?<coverd> | pattern = | did you mean covered?",
        "(?<speed> | (?: | pattern = | (?<speed>…)",
        "checksum = \"xor\" | checksum = \"none\" | checksum = \"none\" | always checked",
        "checksum = \"xor\" | checksum = \"crc\" | checksum = \"crc\" | take one of them",
        "good_status = \"A\" | # | pattern = | add it, or take the group out",
        "least = \"60 ft/s\" | least = \"60\" | least = \"60\" | add the unit",
        "least = \"60 ft/s\" | least = \"600 ft/s\" | most = | raise it",
        "means = \"ft/s\" | means = \"fps\" | means = \"fps\" | take one of them",
        "word = \"M\" | word = \"F\" # again | word = \"F\" # again | take one out",
        "spacing = \"609.6 mm\" | spacing = \"2 cubits\" | spacing = \"2 cubits\" | use one of",
        "agree = \"0.1 %\" | agree = \"0.1\" | agree = \"0.1\" | percent sign",
        "(?<status>[A-Z]) | [A-Z] | pattern = | (?<status>…)",
        "{gate1 6} | {gate2 6} | line = \"$PLWT | it has no field {gate2}",
        "{speed 4.1} | {speed 5.1} | line = \"$PLWT | make the pattern read the line",
        "{speed 4.1} | {speed 1.1} | line = \"$PLWT | needs more than 1 digits"
      })
  void refusesFaultWithItsPlaceAndItsMend(String piece, String instead, String place, String mend) {
    String faulty =
        gateTimer()
            .replaceFirst(
                java.util.regex.Pattern.quote(piece),
                java.util.regex.Matcher.quoteReplacement(instead));
    List<WrittenFault> faults = faults(faulty);
    int line = lineOf(faulty, "\n" + place) + 1;
    assertTrue(
        faults.stream()
            .anyMatch(
                f ->
                    f.file().equals("p.toml")
                        && f.line() == line
                        && f.column() > 0
                        && f.mend().toString().contains(mend)),
        () -> "line " + line + ": " + faults);
  }

  @Test
  void refusesAPatternThatDoesNotCompileWithThePlaceInIt() {
    String mend =
        faults(gateTimer().replace("(?<status>[A-Z])", "(?<status>[A-Z")).get(0).mend().toString();
    assertTrue(mend.matches("mend it at character [0-9]+ of the pattern: .+"), mend);
  }

  @Test
  void refusesLinesThatNothingTellsApartFromTheirRepeats() {
    List<WrittenFault> faults =
        faults(Profiles.text("plain-decimal").replace("apart_ms = 1000\n", ""));
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).mend().toString().contains("apart_ms = 1000"));
  }

  @Test
  void refusesALineWithoutAnyUnit() {
    List<WrittenFault> faults =
        faults(Profiles.text("plain-decimal").replace("unit = \"ft/s\"\n", ""));
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).mend().toString().contains("unit = \"ft/s\""));
  }

  @Test
  void tellsEveryFaultAtOnceInTheOrderOfTheFile() {
    List<WrittenFault> faults =
        faults(
            gateTimer()
                .replace("baud = 9600", "baud = 1")
                .replace("longest = 80", "longest = 0")
                .replace("least = \"60 ft/s\"", "least = \"slow\""));
    assertEquals(3, faults.size(), faults.toString());
    assertTrue(faults.get(0).line() < faults.get(1).line());
    assertTrue(faults.get(1).line() < faults.get(2).line());
  }

  @Test
  void anEmptyFileIsRefusedWithEverySectionItLacks() {
    assertEquals(5, faults("").size());
  }
}
