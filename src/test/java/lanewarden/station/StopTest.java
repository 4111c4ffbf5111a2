package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

/**
 * The line is stopped because it is not clear, in the middle of whatever goes on. That nobody draws
 * while somebody is forward, and that the range officer clears the line, is common practice.
 */
class StopTest extends LineTest {
  private void stop() throws Exception {
    line.station.proceedings().stopLine("");
  }

  private void clear() throws Exception {
    line.station.proceedings().clearLine();
  }

  @Test
  void inTheMiddleOfACheckNoReadingIsTakenNoneIsLostAndTheCheckGoesOn() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s");
    stop();
    line.shoot("271 ft/s");
    Fact.LineRefused refused = line.station.view().refused().orElseThrow();
    assertEquals("line not clear", refused.reason());
    assertEquals(line.check().number(), refused.check());
    assertEquals(1, line.check().shots().size());
    for (String code :
        List.of(
            codeOf(() -> line.station.type("271")),
            codeOf(() -> line.station.officiating().declareLastVoid("sun")),
            codeOf(() -> line.station.call("3")))) {
      assertEquals("LINE-NOT-CLEAR", code);
    }
    assertEquals(Optional.empty(), line.station.grounds("3"));
    clear();
    line.shoot("271 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void whyIsSaidAfterwardsAndWhoStopsTwiceSignsOnce() throws Exception {
    stop();
    stop();
    line.station.proceedings().stopLine("somebody is forward");
    assertEquals(
        List.of(new FrameFact.LineStopped(null), new FrameFact.LineStopped("somebody is forward")),
        line.facts(FrameFact.LineStopped.class));
    assertEquals(
        Optional.of("somebody is forward"), line.station.view().stop().orElseThrow().reason());
    clear();
    assertEquals(Optional.empty(), line.station.view().stop());
    assertEquals("NOT-STOPPED", codeOf(this::clear));
  }

  @Test
  void aStopOutlastsDutyTheDayAndTheProgram() throws Exception {
    stop();
    line.station.closeLine("");
    line.close();
    line = PracticeLine.open(line.folder);
    assertEquals("NOBODY-ON-DUTY", codeOf(this::clear));
    line.onDuty();
    assertEquals("LINE-NOT-CLEAR", codeOf(() -> line.station.call("1")));
    clear();
    line.station.call("1");
  }

  @Test
  void noCheckIsPutInQuestionAndAHoldIsNoPartOfIt() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s");
    stop();
    assertFalse(line.check().inQuestion());
    assertEquals(new LineView.Progress(1, 0, 4), line.station.view().progress());
    line.station.proving().hold("a gate was knocked over");
    clear();
    assertEquals("STATION-HELD", codeOf(() -> line.station.call("3")));
    stop();
    line.station.proving().lift("it was not");
    assertTrue(line.station.view().stop().isPresent());
  }

  @Test
  void noShotOfAVerificationIsTakenAndNoneIsBegun() throws Exception {
    line.close();
    Files.writeString(
        line.folder.path().resolve(EventFolder.SETTINGS),
        "[verification]\nshots = 2\nmost_bias = \"1 ft/s\"\nmost_spread = \"1 ft/s\"\n"
            + "reference = \"check bow\"\nspeed = \"296.4 ft/s\"\n",
        StandardOpenOption.APPEND);
    line = PracticeLine.open(line.folder).onDuty();
    line.station.proving().begin();
    line.shoot("296.0 ft/s");
    stop();
    line.shoot("296.9 ft/s");
    assertEquals("line not clear", line.station.view().refused().orElseThrow().reason());
    assertEquals(1, line.facts(Fact.VerificationShot.class).size());
    clear();
    line.shoot("296.9 ft/s");
    assertTrue(line.station.view().verification().running().isEmpty());
    stop();
    assertEquals("LINE-NOT-CLEAR", codeOf(line.station.proving()::begin));
  }

  @Test
  void aPracticeTakesNoShotEither() throws Exception {
    line.station.practising().shoot(new PracticeSetUpText("Red", "short", "350", "", "", "", ""));
    line.station.practising().listen();
    stop();
    line.shoot("271 ft/s");
    assertEquals(Optional.empty(), line.station.practising().comparison());
    assertEquals("line not clear", line.station.view().refused().orElseThrow().reason());
    assertEquals("LINE-NOT-CLEAR", codeOf(() -> line.station.practising().type("271")));
  }

  /**
   * Who presses the key must not believe that the line is stopped where nothing could be signed.
   */
  @Test
  void whatCannotBeSignedIsToldAsALineThatIsNotStopped() throws Exception {
    line.station.signOut();
    StationException refused = assertThrows(StationException.class, this::stop);
    assertEquals("STOP-UNSIGNED", refused.trouble().code());
    assertTrue(refused.trouble().what().contains("NOT stopped"), refused.trouble().what());
    assertTrue(refused.trouble().remedy().startsWith("Nobody shoots."));
    assertEquals(Optional.empty(), line.station.view().stop());
  }
}
