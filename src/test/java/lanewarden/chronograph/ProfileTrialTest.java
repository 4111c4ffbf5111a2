package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A right instrument heard through a profile with one key wrong: the trial names the key. */
class ProfileTrialTest {
  private static final String TIMER = Profiles.text("gate-timer");
  private static final String SENT =
      IntStream.rangeClosed(1, 6)
          .mapToObj(shot -> Profiles.good(shot).characters())
          .collect(Collectors.joining());

  private static ProfileTrial trial(String profile, byte[] sent) {
    SentenceProfile tried = Profiles.of(profile);
    ProfileTrial trial = new ProfileTrial(tried);
    Decoder decoder = Profiles.opened(tried);
    decoder.feed(RawBytes.of(sent), 1).forEach(trial::take);
    decoder.lost(2).forEach(trial::take);
    return trial;
  }

  private static void finds(String key, String words, String profile, String sent) {
    List<Finding> findings = trial(profile, RawBytes.ofText(sent).bytes()).findings();
    assertEquals(List.of(key), findings.stream().map(Finding::key).toList(), findings.toString());
    assertTrue(findings.get(0).words().contains(words), findings.toString());
  }

  private static String with(String key, String instead) {
    assertTrue(TIMER.contains(key), key);
    // Without the simulator's line, which would be tried on the wrong pattern
    return TIMER.substring(0, TIMER.indexOf("[simulator]")).replace(key, instead);
  }

  @Test
  void aRightProfileHasNothingToMend() {
    ProfileTrial trial = trial(TIMER, RawBytes.ofText(SENT).bytes());
    assertEquals(List.of(), trial.findings());
    assertEquals(6, trial.readings());
  }

  @Test
  void nothingHeard() {
    finds("[port]", "Nothing came.", TIMER, "");
  }

  @Test
  void wrongBaudRate() {
    byte[] noise = new byte[200];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (byte) (i * 37);
    }
    Finding finding = trial(TIMER, noise).findings().get(0);
    assertEquals("[port] baud", finding.key());
    assertTrue(finding.words().contains("baud rate is not 9600"), finding.words());
  }

  @Test
  void aParityBitTakenForData() {
    byte[] sent = RawBytes.ofText(SENT).bytes();
    for (int i = 0; i < sent.length; i++) {
      sent[i] |= (byte) (Integer.bitCount(sent[i]) % 2 << 7);
    }
    Finding finding = trial(TIMER, sent).findings().get(0);
    assertEquals("[port] data_bits, parity", finding.key());
  }

  @Test
  void anotherTerminatorThanWritten() {
    finds("[line] terminator", "Write terminator = \"\\n\"", TIMER, SENT.replace("\r\n", "\n"));
    finds(
        "[line] terminator",
        "Write terminator = \"\\r\\n\"",
        with("terminator = \"\\r\\n\"", "terminator = \"\\n\""),
        SENT);
  }

  @Test
  void noEndOfALineAtAll() {
    finds("[line] terminator", "No line ended", TIMER, "$PLWT,00001,0300.1");
  }

  @Test
  void linesLongerThanAllowed() {
    finds("[line] longest", "Write longest = 32", with("longest = 80", "longest = 20"), SENT);
  }

  @Test
  void aPatternThatStopsMatchingMidway() {
    finds(
        "[sentence] pattern",
        "it fits up to character 11; the pattern does not take \",\" after \"$PLWT,00001\"",
        with("[0-9]{5}", "[0-9]{6}"),
        SENT);
  }

  @Test
  void aPatternThatAsksForMoreThanTheLineHas() {
    finds(
        "[sentence] pattern",
        "the pattern asks for more after it",
        with("(?<checksum>[0-9A-F]{2})", "(?<checksum>[0-9A-F]{2}) OK"),
        SENT);
  }

  @Test
  void anotherStart() {
    finds(
        "[sentence] start",
        "does not begin with \"#\"",
        with("start = \"$\"", "start = \"#\""),
        SENT);
  }

  @Test
  void theWrongKindOfChecksumIsNamedWithTheOneThatFits() {
    finds(
        "[sentence] checksum",
        "Write checksum = \"xor\"",
        with("checksum = \"xor\"", "checksum = \"sum\""),
        SENT);
    finds(
        "[sentence] checksum",
        "no other kind known here fits",
        with("(?<covered>PLWT", "P(?<covered>LWT"),
        SENT);
  }

  @Test
  void unknownWordsAreNamed() {
    finds("[[unit]] word", "came as \"F\"", with("word = \"F\"", "word = \"FPS\""), SENT);
    finds(
        "[sentence] good_status",
        "came as \"A\"",
        with("good_status = \"A\"", "good_status = \"OK\""),
        SENT);
  }

  @Test
  void speedsOutsideTheRange() {
    finds("[sentence] least, most", "such as 300.1 ft/s", with("500 ft/s", "250 ft/s"), SENT);
    finds(
        "[sentence] unit",
        "In the other unit all would be inside",
        Profiles.text("plain-decimal").replace("unit = \"ft/s\"", "unit = \"m/s\""),
        "300.1\r\n298.2\r\n299.5\r\n");
  }

  @Test
  void repeatedLines() {
    finds(
        "[sentence] pattern",
        "the number of the line before",
        TIMER,
        Profiles.good(1).characters().repeat(4));
    finds(
        "[sentence] apart_ms",
        "2 lines came less than 1000 ms after the last",
        Profiles.text("plain-decimal"),
        "300.1\r\n298.2\r\n299.5\r\n");
  }

  @Test
  void aWrongSpacing() {
    finds("[[gate]] spacing", "6 of 6 lines", with("609.6 mm", "600 mm"), SENT);
  }
}
