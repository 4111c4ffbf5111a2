package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Optional;
import lanewarden.chronograph.PseudoTerminal;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What a check-up says of a serial port, with a real pseudo-terminal in its place. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no pseudo-terminals of this kind")
class CheckUpPortTest {
  @TempDir Path here;
  private EventFolder event;

  @BeforeEach
  void make() throws Exception {
    event = PracticeEvent.make(here.resolve("event"));
  }

  private void port(Path port) throws Exception {
    Files.writeString(
        event.path().resolve(EventFolder.SETTINGS),
        new StationSettings(
                PracticeEvent.STATION,
                "gate-timer.toml",
                StationSettings.Kind.SERIAL,
                port.toString())
            .toToml());
  }

  private Point point(Subject subject, Optional<Station> open) throws Exception {
    return new CheckUp(PracticeEvent.here(), ZoneOffset.UTC)
        .of(event, open).points().stream()
            .filter(p -> p.subject() == subject)
            .findAny()
            .orElseThrow();
  }

  @Test
  void portThatIsThereOpensWithTheProfilesSettings() throws Exception {
    try (PseudoTerminal terminal = PseudoTerminal.open()) {
      port(terminal.path());
      Point found = point(Subject.PORT, Optional.empty());
      assertEquals(State.GOOD, found.state(), found.toString());
      assertTrue(found.details().contains("opens with 9600 8N1"), found.details());
      assertEquals(State.ATTENTION, point(Subject.INSTRUMENT, Optional.empty()).state());
    }
  }

  @Test
  void portThatIsNotThereIsWrongWithTheSameCodeAsAtTheLine() throws Exception {
    port(here.resolve("ttyNONE"));
    Point found = point(Subject.PORT, Optional.empty());
    assertEquals(State.WRONG, found.state(), found.toString());
    assertTrue(found.details().contains("(PORT-MISSING)"), found.details());
    assertTrue(found.remedy().startsWith("The ports that are here now: "), found.remedy());
  }

  @Test
  void openLineHasThePortAndIsAskedInstead() throws Exception {
    try (PseudoTerminal terminal = PseudoTerminal.open()) {
      port(terminal.path());
      try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 1, PracticeEvent.here())) {
        line.station().signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
        while (line.station().view().link() != LineView.Link.UP) {
          Thread.sleep(20);
        }
        Point open = point(Subject.PORT, Optional.of(line.station()));
        assertEquals(State.GOOD, open.state(), open.toString());
        Point beside = point(Subject.PORT, Optional.empty());
        assertEquals(State.ATTENTION, beside.state(), beside.toString());
        assertTrue(beside.details().contains("PORT-BUSY"), beside.details());
      }
    }
  }
}
