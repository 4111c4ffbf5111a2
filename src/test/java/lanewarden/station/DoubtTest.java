package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings that are not believed, at the line. */
class DoubtTest {
  private static final String RULES =
      """
      format = 1
      [event]
      name = "Doubts"
      edition = "1"
      [[division]]
      code = "JU"
      name = "Jump"
      limit = "309 ft/s"
      tolerance = "none"
      decide = "highest"
      counted = 3
      shots = 4
      voids = 1
      rechecks = 1
      jump = "10 ft/s"
      [[division]]
      code = "GR"
      name = "Grubbs"
      limit = "300 ft/s"
      tolerance = "3 %"
      decide = "mean"
      counted = 5
      shots = 8
      voids = 2
      rechecks = 1
      outlier = "Grubbs at 5 %"
      outlier-least = "3 ft/s"
      """;

  /** The figures of the second are common practice: 101 ft·lbf are available. */
  private static final String ROSTER =
      """
      bib,name,division,arrow-mass,draw-weight,draw-length,brace-height
      1,Ann Plain,JU,,,,
      2,Ben Bow,JU,350 gr,60 lbf,29 in,7 in
      3,Cora Odd,GR,,,,
      """;

  @TempDir Path folder;
  private PracticeLine line;

  @BeforeEach
  void openTheLine() throws Exception {
    EventFolder event =
        PracticeEvent.draft(RULES, ROSTER)
            .make(folder.resolve("event"), Clock.systemUTC(), System::nanoTime, new SecureRandom());
    line = PracticeLine.open(event).onDuty();
  }

  @AfterEach
  void closeTheLine() throws Exception {
    line.close();
  }

  private CheckView view() {
    return line.station.view().check().orElseThrow();
  }

  @Test
  void whatTheBowCannotGiveIsFlaggedAndTheRestDecides() throws Exception {
    line.station.call("2");
    line.shoot("298.0 ft/s", "390.0 ft/s", "301.0 ft/s");
    assertEquals(Optional.empty(), line.outcome());
    line.shoot("301.0 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    Fact.ReadingFlagged flag = line.facts(Fact.ReadingFlagged.class).get(0);
    assertEquals("impossible", flag.kind());
    assertTrue(flag.words().contains("118 ft·lbf of 101 ft·lbf available"), flag.words());
    assertEquals(1, line.facts(Fact.ReadingFlagged.class).size());
    List<Long> counted = line.facts(Fact.VerdictGiven.class).get(0).readings();
    assertEquals(3, counted.size());
    assertFalse(counted.contains(flag.reading()));
  }

  @Test
  void noFailRestsOnAJumpBeforeTheOfficialHasSpoken() throws Exception {
    line.station.call("1");
    line.shoot("298.0 ft/s", "390.0 ft/s");
    assertEquals(Optional.empty(), line.outcome());
    assertFalse(view().takesShots());
    assertTrue(view().words().startsWith("in doubt: shot 2"), view().words());
    line.shoot("301.0 ft/s");
    assertEquals("not asked for", line.check().refused().get(0).reason());

    line.station
        .officiating()
        .declareVoid(line.check().shots().get(1).sequence(), "sun on the sensor");
    line.shoot("301.0 ft/s", "301.0 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void aReadingLetCountDecidesLikeEveryOther() throws Exception {
    line.station.call("1");
    line.shoot("298.0 ft/s", "390.0 ft/s");
    line.station.officiating().keepFirst("the shot was seen");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    Fact.ReadingKept kept = line.facts(Fact.ReadingKept.class).get(0);
    assertEquals("the shot was seen", kept.reason());
  }

  @Test
  void onlyWhatIsInDoubtCanBeLetCountAndOnlyWithAReason() throws Exception {
    line.station.call("1");
    line.shoot("298.0 ft/s");
    assertEquals("NOT-IN-DOUBT", codeOf(() -> line.station.officiating().keepFirst("why not")));
    long first = line.check().shots().get(0).sequence();
    assertEquals("NOT-IN-DOUBT", codeOf(() -> line.station.officiating().keep(first, "why not")));
    line.shoot("280.0 ft/s");
    assertEquals("REASON-MISSING", codeOf(() -> line.station.officiating().keepFirst(" ")));
    assertEquals(List.of(), line.facts(Fact.ReadingKept.class));
  }

  @Test
  void aSecondMisreadWithdrawsNoQuestionAboutTheFirst() throws Exception {
    line.station.call("3");
    line.shoot("315.0 ft/s", "315.2 ft/s", "315.1 ft/s", "270.0 ft/s", "271.0 ft/s");
    assertEquals(Optional.empty(), line.outcome());
    assertTrue(view().words().startsWith("in doubt: shot 4"), view().words());
    line.station.officiating().keepFirst("seen by both");
    assertEquals(Optional.empty(), line.outcome());
    assertTrue(view().words().startsWith("in doubt: shot 5"), view().words());
    line.station.officiating().keepFirst("seen by both");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(2, line.facts(Fact.ReadingFlagged.class).size());
  }

  @Test
  void bothMisreadsDeclaredVoidLeaveTheOthersToDecide() throws Exception {
    line.station.call("3");
    line.shoot("315.0 ft/s", "315.2 ft/s", "315.1 ft/s", "270.0 ft/s", "271.0 ft/s");
    line.station.officiating().declareVoid(line.check().shots().get(3).sequence(), "a glint");
    line.station.officiating().declareVoid(line.check().shots().get(4).sequence(), "a glint");
    line.shoot("315.0 ft/s", "315.1 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
  }

  @Test
  void figuresStatedLaterAreAskedOfReadingsTakenBefore() throws Exception {
    line.station.call("1");
    line.shoot("390.0 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    line.station.officiating().state(new SetUpText("350", "60", "", "29", "7"));
    assertEquals(Optional.empty(), line.outcome());
    assertTrue(view().takesShots());
    assertEquals("impossible", line.facts(Fact.ReadingFlagged.class).get(0).kind());
    line.shoot("301.0 ft/s", "301.0 ft/s", "300.0 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }
}
