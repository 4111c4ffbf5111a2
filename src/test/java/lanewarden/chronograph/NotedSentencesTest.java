package lanewarden.chronograph;

import static lanewarden.chronograph.Collected.refusals;
import static lanewarden.chronograph.Collected.speeds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import lanewarden.Notes;
import lanewarden.metrology.ErrorSource;
import lanewarden.quantity.Length;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;

/** The sentences and gate times of {@code hardware-notes}, read through the example profiles. */
class NotedSentencesTest {
  private static final Pattern LINE = Pattern.compile("\\$PL[^`\\s]*");
  private static final BigDecimal MICRO = new BigDecimal("0.000001");

  private static SentenceProfile profileOf(String line) {
    return line.startsWith("$PLWG") ? Profiles.threeGateTimer() : Profiles.gateTimer();
  }

  /** The speed that is heard, or why none is. */
  private static String outcome(String line) {
    List<Signal> signals = opened(line).feed(RawBytes.ofText(line + "\r\n"), 0);
    assertEquals(1, signals.size(), line);
    return refusals(signals).stream()
        .map(r -> "*" + r.reason().word() + "*")
        .findFirst()
        .orElseGet(() -> speeds(signals).get(0));
  }

  private static Decoder opened(String line) {
    return Profiles.opened(profileOf(line));
  }

  @Test
  void everyLineOfTheTableBecomesWhatItSays() {
    Notes.Table table = Notes.table("the line");
    Set<String> outcomes = new HashSet<>();
    for (List<String> row : table.rows()) {
      String line = row.get(0).replace("`", "");
      assertEquals(row.get(1), outcome(line), line);
      outcomes.add(row.get(1));
    }
    assertTrue(outcomes.size() > 5, "the lines show different outcomes: " + outcomes);
  }

  @Test
  void linesOutsideTheTableAreRead() {
    List<List<String>> table = Notes.table("the line").rows();
    List<String> others =
        Notes.pages().stream()
            .flatMap(page -> LINE.matcher(Notes.text(page)).results())
            .map(MatchResult::group)
            .filter(line -> table.stream().noneMatch(r -> r.get(0).equals("`" + line + "`")))
            .toList();
    for (String line : others) {
      assertTrue(outcome(line).endsWith(" ft/s"), line);
    }
  }

  @Test
  void aLineTakesItsBitsByTheBaudRate() {
    String line = "$PLWT,00042,0300.1,F,006664,A*1C";
    assertTrue(Notes.text("wiring-and-levels.md").contains("`" + line + "`"));
    PortSettings port = Profiles.gateTimer().port();
    assertEquals(1, port.stopBits());
    assertEquals(PortSettings.Parity.NONE, port.parity());
    double bits = (line.length() + 2) * (1.0 + port.dataBits() + port.stopBits());
    for (List<String> row : Notes.table("baud").rows()) {
      double millis = 1000 * bits / Integer.parseInt(row.get(0));
      assertEquals(Notes.print("%.1f ms", millis), row.get(1));
    }
    assertTrue(
        Notes.text("wiring-and-levels.md")
            .contains("`silence_ms` (" + Profiles.gateTimer().line().silence().toMillis() + ")"));
  }

  @Test
  void portsAndSpacingsAreThoseOfTheProfiles() {
    for (List<String> row : Notes.table("gates").rows()) {
      SentenceProfile profile =
          Profiles.of(Profiles.text(row.get(1).replaceAll(".*/|\\.toml`", "")));
      assertEquals(row.get(2), profile.port().toString());
      Length apart = Length.parse(row.get(0).replaceAll(".*, | apart", ""));
      profile.form().gates().ways().forEach(way -> assertEquals(apart, way.spacing()));
    }
  }

  /** The two ways are passed in half the time each. */
  @Test
  void speedsAreWhatTheStationMakesOfTheTimes() {
    Length way = Length.parse("609.6 mm");
    ErrorSource tick = new ErrorSource.ClockTick(way, Duration.ofNanos(1_000));
    for (List<String> row : Notes.table("time over 609.6 mm").rows()) {
      int micros = Integer.parseInt(row.get(0).replace(" µs", ""));
      String speed =
          speeds(
                  Profiles.opened(Profiles.threeGateTimer())
                      .feed(Profiles.passed(1, 0, micros / 2, micros), 0))
              .get(0);
      Speed later =
          new Passage(way.si(), MICRO.multiply(BigDecimal.valueOf(micros + 1)))
              .speed(SpeedUnit.FEET_PER_SECOND);
      double lower = later.siDouble() - Speed.parse(speed).siDouble();
      double standard = tick.at(Speed.parse(speed).siDouble()).standard();
      assertEquals(
          List.of(
              row.get(0),
              speed,
              Notes.print("%.3f ft/s", lower / 0.3048).replace("-", "−"),
              Notes.print("%.3f ft/s", standard / 0.3048)),
          row);
    }
  }
}
