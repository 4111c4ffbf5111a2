package lanewarden.station;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.ledger.Verification;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A check is disputed, shot again beside the first, and ruled on. */
class ProtestTest {
  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private PracticeLine line;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.makeWithAJudge(scratch.resolve("made"));
  }

  @BeforeEach
  void open() throws Exception {
    line = PracticeLine.open(PracticeEvent.copy(made, here.resolve("event"))).onDuty();
  }

  @AfterEach
  void close() throws Exception {
    line.close();
  }

  private void onDuty(String name) throws Exception {
    line.station.signIn(name, PracticeEvent.PASSPHRASE.toCharArray());
  }

  /** A check of Ben Bowyer, at most 282 ft/s by the highest of two. */
  private long check(String... speeds) throws Exception {
    line.station.call("2");
    line.shoot(speeds);
    long number = line.check().number();
    line.station.next();
    return number;
  }

  private long file(long check, Cause cause) throws Exception {
    return line.station.protests().file(check, cause, "the team", "it looked fast").number();
  }

  private long recheck(long protest, String... speeds) throws Exception {
    line.station.recheck(protest);
    line.shoot(speeds);
    long number = line.check().number();
    line.station.next();
    return number;
  }

  private void rule(long protest, Answer answer, long stands) throws Exception {
    line.station.protests().rule(protest, answer, stands, "may shoot on", "it was measured");
  }

  private Protest protest(long number) {
    return line.station.view().docket().protest(number).orElseThrow();
  }

  private List<String> signed() throws Exception {
    List<String> entries = new ArrayList<>();
    Verification.of(
        line.folder.ledger(),
        List.of(),
        examined -> entries.add(new String(examined.entry().jws(), US_ASCII)));
    return entries;
  }

  @ParameterizedTest
  @EnumSource(Cause.class)
  void whoHadNoRecheckLeftMayShootUnderAProtestAndPassesByTheRuling(Cause cause) throws Exception {
    check("283 ft/s");
    long last = check("284 ft/s");
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("2")));

    long protest = file(last, cause);
    line.station.recheck(protest);
    assertEquals(2, line.check().opened().attempt());
    assertEquals("Ben Bowyer", line.check().opened().name());
    line.shoot("281 ft/s", "281.5 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    CheckView view = line.station.view().check().orElseThrow();
    assertEquals("a judge's ruling on protest " + protest, view.follows().orElseThrow().toString());
    assertFalse(view.mayComeBack());
    long beside = line.check().number();
    line.station.next();

    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("2")), "nobody ruled yet");
    assertEquals(0, line.station.view().progress().within());
    List<String> before = signed();
    onDuty(PracticeEvent.JUDGE);
    rule(protest, Answer.UPHELD, beside);
    assertEquals(before, signed().subList(0, before.size()), "a ruling never edits");
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("2")));
    assertEquals(new LineView.Progress(1, 0, 4), line.station.view().progress());
    assertEquals(List.of(beside), protest(protest).rechecks());
  }

  @Test
  void whereTheRuleSendsAFailToAJudgeTheJudgeLetsTheArcherPassByAReferral() throws Exception {
    line.station.call("3");
    line.shoot("58.1 m/s");
    long over = line.check().number();
    line.station.next();
    assertEquals("NO-RECHECK", codeOf(() -> line.station.call("3")));
    long protest = file(over, Cause.REFERRAL);
    long beside = recheck(protest, "57.9 m/s");
    onDuty(PracticeEvent.JUDGE);
    rule(protest, Answer.UPHELD, beside);
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("3")));
    assertEquals(
        List.of(Outcome.OVER, Outcome.WITHIN),
        line.facts(Fact.VerdictGiven.class).stream().map(Fact.VerdictGiven::outcome).toList());
  }

  @Test
  void aSpotCheckThatIsOverTakesThePassAndUsesUpOneRecheck() throws Exception {
    long passed = check("281 ft/s", "281.5 ft/s");
    long protest = file(passed, Cause.SPOT_CHECK);
    long fast = recheck(protest, "290 ft/s");
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("2")));
    onDuty(PracticeEvent.JUDGE);
    rule(protest, Answer.UPHELD, fast);
    line.station.call("2");
    assertEquals(2, line.check().opened().attempt());
    assertEquals(0, line.station.view().check().orElseThrow().rechecksLeft());
    line.shoot("290 ft/s");
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("2")));
  }

  @Test
  void aDismissedProtestLeavesEverythingAsItWas() throws Exception {
    long passed = check("281 ft/s", "281.5 ft/s");
    long protest = file(passed, Cause.PROTEST);
    long again = recheck(protest, "290 ft/s");
    onDuty(PracticeEvent.JUDGE);
    assertEquals("RULING-CONTRADICTS", codeOf(() -> rule(protest, Answer.DISMISSED, again)));
    rule(protest, Answer.DISMISSED, passed);
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("2")));
    assertEquals("PROTEST-RULED", codeOf(() -> rule(protest, Answer.UPHELD, again)));
    assertEquals("PROTEST-RULED", codeOf(() -> line.station.recheck(protest)));
  }

  @Test
  void onlyAJudgeRulesAndNeverOnAShotOfTheirOwn() throws Exception {
    long passed = check("281 ft/s", "281.5 ft/s");
    long protest = file(passed, Cause.PROTEST);
    assertEquals("NOT-A-JUDGE", codeOf(() -> rule(protest, Answer.DISMISSED, passed)));
    onDuty(PracticeEvent.OTHER_OFFICIAL);
    assertEquals("NOT-A-JUDGE", codeOf(() -> rule(protest, Answer.DISMISSED, passed)));
    onDuty(PracticeEvent.JUDGE);
    recheck(protest, "281 ft/s", "281 ft/s");
    assertEquals("OWN-CHECK", codeOf(() -> rule(protest, Answer.DISMISSED, passed)));
  }

  @Test
  void whoOnlyVoidedAReadingOfTheCheckDoesNotRuleOnIt() throws Exception {
    line.station.call("2");
    line.shoot("281 ft/s");
    onDuty(PracticeEvent.JUDGE);
    line.station.officiating().declareLastVoid("glare");
    onDuty(PracticeEvent.OFFICIAL);
    line.shoot("281 ft/s", "281.5 ft/s");
    long check = line.check().number();
    line.station.next();
    long protest = file(check, Cause.PROTEST);
    onDuty(PracticeEvent.JUDGE);
    assertEquals("OWN-CHECK", codeOf(() -> rule(protest, Answer.DISMISSED, check)));
  }

  @Test
  void whoCorrectedTheCheckDoesNotRuleOnIt() throws Exception {
    long check = check("283 ft/s");
    onDuty(PracticeEvent.JUDGE);
    long made = line.station.protests().correctBib(check, "1", "upside down").number();
    onDuty(PracticeEvent.OFFICIAL);
    line.station.protests().confirm(made);
    long protest = file(check, Cause.PROTEST);
    onDuty(PracticeEvent.JUDGE);
    StationException refused =
        assertThrows(StationException.class, () -> rule(protest, Answer.DISMISSED, check));
    assertEquals("OWN-CHECK", refused.trouble().code());
    assertTrue(refused.trouble().why().contains("a correction"), refused.trouble().why());
    assertTrue(refused.trouble().remedy().contains("another judge"), refused.trouble().remedy());
  }

  @Test
  void whatARulingRestsOnIsNotCorrectedToAnotherArcher() throws Exception {
    long over = check("283 ft/s");
    long protest = file(over, Cause.PROTEST);
    long beside = recheck(protest, "281 ft/s", "281.5 ft/s");
    onDuty(PracticeEvent.JUDGE);
    rule(protest, Answer.UPHELD, beside);
    onDuty(PracticeEvent.OFFICIAL);
    for (long check : List.of(over, beside)) {
      StationException refused =
          assertThrows(
              StationException.class,
              () -> line.station.protests().correctBib(check, "1", "upside down"));
      assertEquals("CORRECTION-RULED-ON", refused.trouble().code());
      assertTrue(refused.trouble().remedy().contains("another protest"));
    }
  }

  @Test
  void aRulingWaitsForTheRecheckAndNamesACheckOfTheProtest() throws Exception {
    long other = check("283 ft/s");
    long passed = check("281 ft/s", "281.5 ft/s");
    long protest = file(passed, Cause.PROTEST);
    line.station.recheck(protest);
    line.shoot("281 ft/s");
    onDuty(PracticeEvent.JUDGE);
    assertEquals("RECHECK-RUNNING", codeOf(() -> rule(protest, Answer.DISMISSED, passed)));
    onDuty(PracticeEvent.OFFICIAL);
    long ended = line.check().number();
    line.station.endCheck("the string broke");
    onDuty(PracticeEvent.JUDGE);
    assertEquals("RULING-OTHER-CHECK", codeOf(() -> rule(protest, Answer.UPHELD, other)));
    assertEquals("RECHECK-UNSETTLED", codeOf(() -> rule(protest, Answer.UPHELD, ended)));
    assertEquals("NO-SUCH-PROTEST", codeOf(() -> rule(passed, Answer.UPHELD, passed)));
  }

  @Test
  void nobodyIsRecheckedUntilItSuits() throws Exception {
    long protest = file(check("281 ft/s", "281.5 ft/s"), Cause.PROTEST);
    line.station.recheck(protest);
    line.station.endCheck("the string broke");
    recheck(protest, "290 ft/s");
    assertEquals("RECHECK-SETTLED", codeOf(() -> line.station.recheck(protest)));
  }

  @Test
  void aProtestNeedsACheckThatIsDoneAndIsNoRecheck() throws Exception {
    assertEquals("NO-SUCH-CHECK", codeOf(() -> file(1, Cause.PROTEST)));
    line.station.call("2");
    long running = line.check().number();
    assertEquals("CHECK-RUNNING", codeOf(() -> file(running, Cause.PROTEST)));
    line.shoot("281 ft/s", "281.5 ft/s");
    long protest = file(running, Cause.PROTEST);
    long beside = recheck(protest, "281 ft/s", "281.5 ft/s");
    assertEquals("CHECK-IS-RECHECK", codeOf(() -> file(beside, Cause.PROTEST)));
    assertEquals(
        "REASON-MISSING",
        codeOf(() -> line.station.protests().file(running, Cause.PROTEST, " ", "x")));
  }

  @Test
  void aHeldLineRechecksNobody() throws Exception {
    long protest = file(check("281 ft/s", "281.5 ft/s"), Cause.PROTEST);
    line.station.proving().hold("the stand was knocked");
    assertEquals("STATION-HELD", codeOf(() -> line.station.recheck(protest)));
  }

  @Test
  void aRecheckStatesItsOwnBowAndIsStillThereAfterARestart() throws Exception {
    long protest = file(check("281 ft/s", "281.5 ft/s"), Cause.PROTEST);
    line.station.recheck(protest);
    line.station.officiating().state(new SetUpText("352.5", "60", ""));
    line.shoot("281 ft/s");
    line.close();
    line = PracticeLine.open(line.folder);
    Check running = line.check();
    assertEquals(Long.valueOf(protest), running.opened().protest());
    assertEquals("352.5 gr", String.valueOf(running.setUp().arrowMass()));
    assertEquals(1, running.shots().size());
    assertEquals(2, line.facts(Fact.CheckOpened.class).size());
  }

  @Test
  void theOfficeFilesAndRulesWhereNoStationRuns() throws Exception {
    long check = check("281 ft/s", "281.5 ft/s");
    EventOffice office = new EventOffice(line.folder, PracticeEvent.here());
    Protests busy = office.protests(PracticeEvent.OFFICIAL, pass());
    assertEquals(
        "LEDGER-IN-USE", codeOf(() -> busy.file(check, Cause.RE_TEST, "the jury", "a winner")));
    line.close();
    Protest filed =
        office
            .protests(PracticeEvent.OFFICIAL, pass())
            .file(check, Cause.RE_TEST, "the jury", "a winner");
    assertEquals(
        "NOT-A-JUDGE",
        codeOf(
            () ->
                office
                    .protests(PracticeEvent.OTHER_OFFICIAL, pass())
                    .rule(filed.number(), Answer.DISMISSED, check, "none", "no case")));
    Protest ruled =
        office
            .protests(PracticeEvent.JUDGE, pass())
            .rule(filed.number(), Answer.DISMISSED, check, "none", "no case");
    assertEquals("no case", ruled.ruling().orElseThrow().fact().reason());
    line = PracticeLine.open(line.folder);
  }

  private static char[] pass() {
    return PracticeEvent.PASSPHRASE.toCharArray();
  }
}
