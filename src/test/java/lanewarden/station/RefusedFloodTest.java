package lanewarden.station;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.chronograph.RawBytes;
import lanewarden.journal.Fact;
import lanewarden.journal.Flood;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A flood of refused lines is told in few entries, and every line of it is counted. */
class RefusedFloodTest extends LineTest {
  private static final Pattern COUNTED =
      Pattern.compile("([0-9]+) further lines? of ([0-9]+) bytes");

  private static Fact.LineRefused refused(@Nullable Long check, long millis) {
    return new Fact.LineRefused(
        check,
        Base64.getEncoder().encodeToString("junk\r\n".getBytes(US_ASCII)),
        "torn",
        "It broke off.",
        "serial port",
        "timer",
        Instant.EPOCH.plusMillis(millis));
  }

  /** All facts of so many lines, so many milliseconds apart, with what is told when all is over. */
  private static List<Fact.LineRefused> written(int lines, long apart) {
    RefusedFlood flood = RefusedFlood.none();
    List<Fact> facts = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      RefusedFlood.Step step = flood.take(refused(null, i * apart));
      facts.addAll(step.facts());
      flood = step.next();
    }
    facts.addAll(flood.settled().facts());
    assertEquals(List.of(), flood.settled().next().settled().facts(), "told once");
    return facts.stream().map(Fact.LineRefused.class::cast).toList();
  }

  private static long linesIn(List<Fact.LineRefused> facts) {
    long lines = 0;
    for (Fact.LineRefused fact : facts) {
      Matcher counted = COUNTED.matcher(fact.words());
      boolean several = fact.reason().equals("flood");
      assertEquals(several, counted.find(), fact.words());
      lines += several ? Long.parseLong(counted.group(1)) : 1;
    }
    return lines;
  }

  @ParameterizedTest
  @CsvSource({
    "10, 0, 10",
    "11, 0, 11",
    "12, 0, 12",
    "5000, 0, 12",
    "100, 100, 100",
    "300, 91, 300",
    "1000, 10, 120",
    "7, 999, 7"
  })
  void aFewASecondAreWrittenAndTheRestCounted(int lines, long apart, int entries) {
    List<Fact.LineRefused> facts = written(lines, apart);
    assertEquals(entries, facts.size());
    assertEquals(lines, linesIn(facts));
  }

  @Test
  void theEntryOfAFloodSaysLinesBytesAndFirstBytes() {
    List<Fact.LineRefused> facts = written(511, 1);
    Fact.LineRefused noted = facts.get(Flood.MOST);
    assertTrue(noted.words().contains("counted"), noted.words());
    Fact.LineRefused flood = facts.get(Flood.MOST + 1);
    assertEquals("flood", flood.reason());
    assertTrue(flood.words().startsWith("500 further lines of 3000 bytes"), flood.words());
    assertEquals(
        "junk\r\n".repeat(34).substring(0, RefusedFlood.SAMPLE),
        new String(Base64.getDecoder().decode(flood.raw()), US_ASCII));
    assertEquals(Instant.EPOCH.plusMillis(510), flood.at());
  }

  @Test
  void linesOfAnotherCheckAreNotCountedWithTheseAndAClockSetBackBeginsAnew() {
    RefusedFlood flood = RefusedFlood.none();
    for (int i = 0; i < 13; i++) {
      flood = flood.take(refused(1L, 500)).next();
    }
    assertEquals(2, flood.take(refused(2L, 500)).facts().size());
    assertEquals(2, flood.take(refused(1L, 499)).facts().size());
    assertEquals(0, flood.take(refused(1L, 1499)).facts().size());
    assertEquals(2, flood.take(refused(1L, 1500)).facts().size());
  }

  /** A flood in the middle of a check: what is counted stands before the reading behind it. */
  @Test
  void atTheLineAFloodIsCountedAndTheReadingBehindItTaken() throws Exception {
    line.station.call("1");
    line.emit("junk\\r\\n");
    line.simulator.emit(RawBytes.ofText("junk\r\n".repeat(1_999)));
    line.shoot("301 ft/s");
    assertEquals(1, line.check().shots().size());
    line.simulator.emit(RawBytes.ofText("junk\r\n".repeat(50)));
    line.simulator.settle();
    line.station.signOut();
    List<Fact.LineRefused> written = line.facts(Fact.LineRefused.class);
    assertEquals(2_050, linesIn(written));
    assertTrue(written.size() < 400, written.size() + " entries");
  }
}
