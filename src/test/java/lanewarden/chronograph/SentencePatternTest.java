package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SentencePatternTest {
  @Test
  void theWholeLineMustHaveTheForm() {
    SentencePattern pattern = SentencePattern.parse("(?<speed>[0-9]+)");
    assertEquals(Optional.of("12"), pattern.match("12").flatMap(f -> f.field("speed")));
    assertTrue(pattern.match("12 ").isEmpty());
    assertTrue(pattern.match(" 12").isEmpty());
  }

  @Test
  void aPatternThatBacktracksWithoutEndIsGivenUp() {
    SentencePattern slow = SentencePattern.parse("(?<speed>(?:[0-9]+)+)x");
    assertTimeoutPreemptively(
        Duration.ofSeconds(5), () -> assertTrue(slow.match("1".repeat(60)).isEmpty()));
  }

  @Test
  void refusesAPatternThatDoesNotCompileAndSaysWhere() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> SentencePattern.parse("(?<speed>[0-9+)"));
    assertTrue(
        String.valueOf(refused.getMessage()).startsWith("mend it at character 15 of the pattern: "),
        refused.getMessage());
  }

  @Test
  void aFieldThatTheLineLeavesOutIsEmpty() {
    SentencePattern pattern = SentencePattern.parse("(?<speed>[0-9]+)(?<unit>F)?");
    assertEquals(Optional.empty(), pattern.match("12").orElseThrow().field("unit"));
    assertEquals(Optional.empty(), pattern.match("12").orElseThrow().field("status"));
  }
}
