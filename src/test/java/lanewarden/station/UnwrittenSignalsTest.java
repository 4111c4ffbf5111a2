package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** While another program keeps the ledger's file locked, as a backup does, nothing is lost. */
class UnwrittenSignalsTest extends LineTest {

  private void whileLocked(Executable steps) throws Exception {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + line.folder.ledger().toUri());
        Statement statement = connection.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      assertDoesNotThrow(steps);
    }
  }

  @Test
  void aReadingThatCannotBeWrittenIsNotShownButWaits() throws Exception {
    line.station.call("1");
    whileLocked(
        () -> {
          line.shoot("301 ft/s");
          LineView view = line.station.view();
          assertEquals(List.of(), line.check().shots());
          assertEquals(1, view.unwritten());
          assertEquals("LEDGER-BUSY", view.trouble().orElseThrow().code());
        });
    line.station.retry();
    assertEquals(1, line.check().shots().size());
    assertEquals(0, line.station.view().unwritten());
    assertEquals(Optional.empty(), line.station.view().trouble());
  }

  @Test
  void whatWaitsIsWrittenFirstAndInItsOrder() throws Exception {
    line.station.call("1");
    whileLocked(
        () -> {
          line.shoot("301 ft/s", "302 ft/s");
          assertEquals(2, line.station.view().unwritten());
          assertEquals("LEDGER-BUSY", codeOf(() -> line.station.endCheck("nobody waits")));
        });
    line.shoot("303 ft/s");
    assertEquals(
        List.of("301.0 ft/s", "302.0 ft/s", "303.0 ft/s"),
        line.check().shots().stream().map(s -> s.reading().speed().toString()).toList());
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void aStepOfTheOfficialThatCannotBeWrittenIsNotTaken() throws Exception {
    whileLocked(
        () -> {
          assertEquals("LEDGER-BUSY", codeOf(() -> line.station.call("1")));
          assertEquals(Optional.empty(), line.station.view().check());
        });
    line.station.call("1");
    assertEquals(1, line.check().opened().attempt());
  }

  @Test
  void aStopWaitsAndNothingThatComesAfterItIsTaken() throws Exception {
    line.station.call("1");
    whileLocked(
        () -> {
          line.shoot("301 ft/s");
          for (int press = 0; press < 2; press++) {
            assertEquals("STOP-WAITS", codeOf(() -> line.station.proceedings().stopLine("")));
          }
          line.shoot("302 ft/s");
          assertTrue(line.station.view().stopWaits());
          assertEquals(Optional.empty(), line.station.view().stop());
          assertEquals("STOP-WAITS", line.station.view().trouble().orElseThrow().code());
          assertEquals("STOP-WAITS", codeOf(() -> line.station.endCheck("nobody waits")));
          assertEquals("STOP-WAITS", codeOf(line.station::signOut));
        });
    line.shoot("303 ft/s");
    LineView view = line.station.view();
    assertFalse(view.stopWaits());
    assertTrue(view.stop().isPresent());
    assertEquals(1, line.facts(FrameFact.LineStopped.class).size());
    assertEquals(
        List.of("301.0 ft/s"),
        line.check().shots().stream().map(s -> s.reading().speed().toString()).toList());
    assertEquals(
        List.of("line not clear", "line not clear"),
        line.facts(Fact.LineRefused.class).stream().map(Fact.LineRefused::reason).toList());
  }

  @Test
  void aStopThatWaitsIsSignedWithTheNextPressAndSaidOnce() throws Exception {
    line.station.practising().shoot(new PracticeSetUpText("Red", "short", "350", "", "", "", ""));
    line.station.practising().listen();
    whileLocked(
        () -> {
          assertEquals(
              "STOP-WAITS", codeOf(() -> line.station.proceedings().stopLine("a dog is forward")));
          line.shoot("271 ft/s");
          assertEquals(Optional.empty(), line.station.practising().comparison());
        });
    line.station.proceedings().stopLine("");
    assertEquals(
        List.of(new FrameFact.LineStopped("a dog is forward")),
        line.facts(FrameFact.LineStopped.class));
    assertEquals(Optional.empty(), line.station.view().trouble());
  }

  /** Whoever sees the archer draw must not wait for the disk. */
  @Test
  void aStopIsSeenBeforeTheDiskAnswersAndSignedByItselfOnceItDoes() throws Exception {
    List<String> seen = new ArrayList<>();
    line.station.listen(view -> seen.add(view.stopWaits() + " " + view.trouble().isPresent()));
    whileLocked(
        () -> assertEquals("STOP-WAITS", codeOf(() -> line.station.proceedings().stopLine(""))));
    assertTrue(seen.indexOf("true false") >= 0, seen.toString());
    assertTrue(seen.indexOf("true false") < seen.indexOf("true true"), seen.toString());
    line.station.proceedings().trySigningStop();
    assertTrue(line.station.view().stop().isPresent());
    assertEquals(Optional.empty(), line.station.view().trouble());
  }
}
