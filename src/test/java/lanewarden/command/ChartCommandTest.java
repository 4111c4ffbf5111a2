package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The instrument's control charts in a terminal. */
class ChartCommandTest extends PracticeRun {
  private static final double FOOT = 0.3048;

  /** Plans verifications in which nothing is shot: the official types. */
  private void plan() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"), "@ nobody\n0 x\\r\\n\n@ verification\n");
    Files.writeString(
        event.path().resolve("station.toml"),
        "[verification]\nshots = 2\nmost_bias = \"0.5 %\"\nmost_spread = \"20 ft/s\"\n"
            + "reference = \"check bow\"\nspeed = \"300 ft/s\"\n",
        StandardOpenOption.APPEND);
  }

  private Typed chart(String... more) {
    List<String> words = new ArrayList<>(List.of("chart", event.path().toString()));
    words.addAll(List.of(more));
    return new Typed().run(words.toArray(String[]::new));
  }

  private void verify(String first, String second) {
    Typed typed = line("prove", "typed " + first, "typed " + second, "out");
    assertEquals(0, typed.code(), typed.toString());
  }

  /** NIST/SEMATECH e-Handbook 6.3.2.2 and 6.3.2.4, for differences of 0, 1, 0 and 3 ft/s. */
  @Test
  void everyShotItsDifferenceTheAverageAndTheLimitsAreTold() throws Exception {
    plan();
    verify("300 ft/s", "301 ft/s");
    verify("300 ft/s", "303 ft/s");
    Typed typed = chart();
    assertEquals(0, typed.code(), typed.toString());
    for (String line :
        List.of(
            // 0.3 × 0 + 0.7 × 1, then 0.3 × 1 + 0.7 × 0.7
            "shot     1: +0.00 ft/s, average +0.70 ft/s; 300 ft/s against 300 ft/s, typed,",
            "shot     2: +1.00 ft/s, average +0.79 ft/s; 301 ft/s against 300 ft/s, typed,",
            "mean     +1.00 ft/s, station minus reference",
            // 1 ± 3 × (5/3) / 1.128
            "single   INSIDE: all 4; the limits are −3.43 ft/s and +5.43 ft/s",
            "average  INSIDE: all 4; the limits are ",
            "bias     a verification passes with a mean of at most ±1.5 ft/s")) {
      assertTrue(typed.lines().stream().anyMatch(l -> l.startsWith(line)), line + "\n" + typed);
    }
    JsonNode fourth = new ObjectMapper().readTree(chart("--json").lines().get(3));
    assertEquals(3 * FOOT, fourth.get("difference").asDouble(), 1e-9);
    assertEquals(4, fourth.get("number").asInt());
    assertEquals(2, fourth.get("shot").asInt());
  }

  /**
   * Eleven differences of nothing and one of 10 ft/s: mean 10/12, moving ranges 0 but for the last,
   * so the upper limit is 10/12 + 3 × (10/11) / 1.128 = 3.25 ft/s (6.3.2.2).
   */
  @Test
  void aShotOutsideIsNamed() throws Exception {
    plan();
    for (int i = 0; i < 5; i++) {
      verify("300 ft/s", "300 ft/s");
    }
    verify("300 ft/s", "310 ft/s");
    Typed typed = chart();
    assertTrue(
        typed.results().contains("shot     12: +10.00 ft/s OUTSIDE, average "), typed.toString());
    assertTrue(
        typed.lines().stream()
            .anyMatch(l -> l.startsWith("single   OUTSIDE: shot 12;") && l.contains("+3.25 ft/s")),
        typed.toString());
  }

  @Test
  void withNoVerificationItSaysSoInEnglish() {
    assertTrue(chart().talk().contains("The ledger has no verification."), chart().toString());
  }

  @Test
  void withFewerThanTwoShotsItSaysWhatIsMissing() throws Exception {
    plan();
    line("prove", "typed 300 ft/s", "break the string broke", "out");
    Typed typed = chart();
    assertEquals(0, typed.code(), typed.toString());
    assertEquals("", typed.results());
    assertTrue(typed.talk().contains("The ledger has 1 verification."), typed.toString());
    line("prove", "typed 300 ft/s", "break the string broke", "out");
    assertTrue(chart().talk().contains("The ledger has 2 verifications."), chart().toString());
  }
}
