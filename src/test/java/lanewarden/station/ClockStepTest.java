package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.journal.FactJson;
import lanewarden.journal.FactRefused;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Verification;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A station notices when its computer's clock is set, and signs it before it goes on. */
class ClockStepTest {
  @TempDir Path here;
  private final SetClock clock = new SetClock();
  private EventFolder event;

  @BeforeEach
  void make() throws Exception {
    event = PracticeEvent.make(here.resolve("event"));
  }

  private Station open() throws Exception {
    Station station =
        Station.open(
            event,
            new SimulatedInstrument(event.profile(), clock),
            "Lanewarden under test",
            clock,
            clock::nanos);
    station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
    return station;
  }

  private List<FrameFact.ClockStepped> steps() throws Exception {
    List<FrameFact.ClockStepped> steps = new ArrayList<>();
    Verification.of(
        event.ledger(),
        List.of(),
        examined -> {
          try {
            if (FactJson.read(examined.entry()).orElse(null)
                instanceof FrameFact.ClockStepped step) {
              steps.add(step);
            }
          } catch (FactRefused e) {
            throw new AssertionError(e);
          }
        });
    return steps;
  }

  @Test
  void timeThatPassesIsNoStep() throws Exception {
    try (Station station = open()) {
      for (int hour = 0; hour < 8; hour++) {
        clock.pass(Duration.ofHours(1));
        clock.set(Duration.ofMillis(1800));
        station.call("1");
        station.endCheck("only looked at");
      }
      assertEquals(List.of(), steps());
      assertEquals(Optional.empty(), station.view().trouble());
    }
  }

  @Test
  void aClockSetBackIsSignedBeforeWhatComesNextAndTheOfficialIsTold() throws Exception {
    try (Station station = open()) {
      station.call("4");
      clock.pass(Duration.ofMinutes(10));
      clock.set(Duration.ofHours(-1));
      station.type("301 ft/s");
      FrameFact.ClockStepped step = steps().get(0);
      assertEquals(new BigDecimal("-3600.000"), step.by());
      assertEquals(Instant.parse("2026-05-30T07:40:00Z"), step.expected());
      Trouble told = station.view().trouble().orElseThrow();
      assertEquals("CLOCK-STEPPED", told.code());
      assertEquals("The computer's clock jumped back by 3600.000 s.", told.what());
      clock.pass(Duration.ofMinutes(1));
      station.endCheck("the clock was set");
      station.call("1");
      assertEquals(Optional.empty(), station.view().trouble());
      assertEquals(1, steps().size());
    }
  }

  @Test
  void aStepThatCouldNotBeWrittenIsFoundAgain() throws Exception {
    try (Station station = open()) {
      clock.set(Duration.ofMillis(2001));
      try (var other = DriverManager.getConnection("jdbc:sqlite:" + event.ledger());
          var statement = other.createStatement()) {
        statement.execute("BEGIN IMMEDIATE");
        assertEquals("LEDGER-BUSY", PracticeLine.codeOf(() -> station.call("1")));
      }
      assertEquals(List.of(), steps());
      station.call("1");
      assertTrue(steps().get(0).by().compareTo(new BigDecimal("2.001")) == 0);
    }
  }
}
