package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes as a profile or a capture: read whole, or refused with the places of its faults. */
class WrittenFuzzTest {
  private static final RawBytes LINES =
      Profiles.good(1).then(RawBytes.ofText("300.1\r\nnoise\r\n\n\n")).then(Profiles.good(2));

  private static final List<SentenceProfile> TRIED =
      List.of(Profiles.gateTimer(), Profiles.plainDecimal());

  static Stream<byte[]> profiles() {
    String timer = Profiles.text("gate-timer");
    return Stream.of(
            timer,
            Profiles.text("plain-decimal"),
            timer.replace("(?<covered>", "(?<covered>(a|aa)*+"),
            timer.replace("60 ft/s", "600 ft/s"),
            timer.replace("[[gate]]", "[gate]"))
        .map(text -> RawBytes.ofText(text).bytes());
  }

  /** A profile that is taken never breaks on a line, and lets no speed pass that it forbids. */
  @MethodSource("profiles")
  @FuzzTest
  void profile(byte[] bytes) {
    SentenceProfile profile;
    try {
      profile = SentenceProfile.read("fuzzed.toml", bytes);
    } catch (WrittenRefused refused) {
      assertFalse(refused.faults().isEmpty());
      return;
    }
    Decoder decoder = Profiles.opened(profile);
    RawBytes own = profile.line().terminator();
    List<Signal> signals = new ArrayList<>(decoder.feed(LINES.then(own).then(LINES), 1));
    signals.addAll(decoder.lost(2));
    int length = 0;
    for (Signal signal : signals) {
      if (signal instanceof Signal.Heard heard) {
        assertTrue(profile.plausible().holds(heard.reading().speed()), () -> heard.toString());
        length += heard.reading().raw().length();
      } else {
        length += ((Signal.Refused) signal).refusal().raw().length();
      }
    }
    assertEquals(2 * LINES.length() + own.length(), length, "every byte in a signal");
  }

  static Stream<byte[]> streams() {
    return Stream.of(
            "", "\r\n", "300.1\r\n", LINES.characters(), "a;b;", "\u0001\u0002\u0003\u0004")
        .map(text -> RawBytes.ofText(text).bytes());
  }

  /** Whatever came, the trial says something about it unless every line was a reading. */
  @MethodSource("streams")
  @FuzzTest
  void trial(byte[] bytes) {
    for (SentenceProfile profile : TRIED) {
      ProfileTrial trial = new ProfileTrial(profile);
      Decoder decoder = Profiles.opened(profile);
      decoder.feed(RawBytes.of(bytes), 1).forEach(trial::take);
      decoder.lost(2).forEach(trial::take);
      List<Finding> findings = trial.findings();
      assertTrue(trial.readings() > 0 || !findings.isEmpty(), "silent about no reading");
      for (Finding finding : findings) {
        assertTrue(finding.key().startsWith("[") && !finding.words().isBlank(), finding.key());
      }
    }
  }

  static Stream<byte[]> captures() {
    return Stream.of(
            "# a comment\n@ first\n500 $PLWT,00042,0300.1,F,006664,A*1C\\r\\n\n0 \\x00\\xFF\n",
            "0 a\n@ one\n3600000 b\\x20\n@ two\n1 \\\\\n",
            "soon a\n",
            "@ fi\rrst\n500 300.1\n",
            "1 \\y\n@\n")
        .map(text -> RawBytes.ofText(text).bytes());
  }

  /** A capture that is taken reads back from its own text as the same chunks and labels. */
  @MethodSource("captures")
  @FuzzTest
  void capture(byte[] bytes) throws WrittenRefused {
    Capture capture;
    try {
      capture = Capture.read("fuzzed.capture", bytes);
    } catch (WrittenRefused refused) {
      assertFalse(refused.faults().isEmpty());
      return;
    }
    Capture again = Capture.read("again.capture", RawBytes.ofText(capture.text()).bytes());
    assertEquals(capture.chunks(), again.chunks());
    assertEquals(capture.labels(), again.labels());
  }
}
