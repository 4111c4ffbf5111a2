package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.ledger.Verification;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the audit finds about the instrument's verifications and the holds of the line. */
class InstrumentFindingsTest {
  private static final Speed BOW = Speed.parse("296.4 ft/s");
  private static final String[] GOOD = {"296.0 ft/s", "296.5 ft/s", "296.9 ft/s"};
  private static final String[] OFF = {"299.0 ft/s", "299.1 ft/s", "299.2 ft/s"};

  @TempDir Path folder;
  private ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private List<Finding> findings() throws Exception {
    LedgerFold fold = new LedgerFold(new Announcer(progress -> {}), 0);
    Verification verification = Verification.of(ledger.file(), List.of(), fold);
    return Figures.of(fold.finish(verification)).findings();
  }

  private List<Kind> kinds() throws Exception {
    return findings().stream().map(Finding::kind).toList();
  }

  private String words(Kind kind) throws Exception {
    List<String> words =
        findings().stream().filter(f -> f.kind() == kind).map(Finding::words).toList();
    assertEquals(1, words.size(), kind + ": " + words);
    return words.get(0);
  }

  private void plan(boolean beforeOpening, Integer every, boolean atEnd) throws Exception {
    ledger.say(new Fact.VerificationPlanned(beforeOpening, every, atEnd));
  }

  private long begin() throws Exception {
    return begin(3, "1 ft/s", "1 ft/s");
  }

  private long begin(int shots, String mostBias, String mostSpread) throws Exception {
    return ledger.say(
        new Fact.VerificationBegan("on request", "check bow", shots, mostBias, mostSpread, BOW));
  }

  private long shots(String... speeds) throws Exception {
    return shots(begin(), speeds);
  }

  private long shots(long round, String... speeds) throws Exception {
    for (int i = 0; i < speeds.length; i++) {
      shot(round, i + 1, speeds[i], BOW);
    }
    return round;
  }

  private void shot(long round, int number, String speed, Speed reference) throws Exception {
    ledger.say(
        new Fact.VerificationShot(
            round,
            number,
            Speed.parse(speed),
            "",
            "serial port",
            "gate timer",
            Instant.EPOCH,
            reference));
  }

  private long verify(boolean passed, String... speeds) throws Exception {
    long round = shots(speeds);
    ledger.say(new Fact.VerificationEnded(round, passed, "as computed", null));
    return round;
  }

  private long hold(Long by, Long... checks) throws Exception {
    return ledger.say(new Fact.LineHeld(by, "the stand was knocked", List.of(checks)));
  }

  private long marta() throws Exception {
    return ledger.check("101", "Marta Olesund", "OC", "302 ft/s", "301 ft/s", "300 ft/s");
  }

  private long edwin() throws Exception {
    return ledger.check("401", "Edwin Thackerby", "LB", "57.9 m/s");
  }

  @Test
  void anHonestDayWithVerificationsHasNoFindings() throws Exception {
    plan(true, 1, true);
    verify(true, GOOD);
    marta();
    verify(true, GOOD);
    edwin();
    verify(true, GOOD);
    ledger.say(new Fact.StationClosed(null));
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(List.of(), report.summary().findings());
    assertTrue(report.says("bias +0.067 ft/s (at most 1 ft/s), spread 0.451 ft/s"));
    assertTrue(report.says("296.5 ft/s against 296.4 ft/s"));
  }

  @Test
  void aLineRefusedDuringAVerificationIsListedAsOfIt() throws Exception {
    Fact.LineRefused torn =
        new Fact.LineRefused(
            null, "JDI5/w0K", "torn", "It was cut.", "serial port", "timer", Instant.EPOCH);
    long round = begin();
    ledger.say(torn);
    ledger.say(new Fact.VerificationEnded(round, false, "broken off", "rain"));
    ledger.say(torn);
    List<String> words =
        findings().stream().filter(f -> f.kind() == Kind.LINE_REFUSED).map(Finding::words).toList();
    assertEquals(2, words.size());
    assertTrue(words.get(0).startsWith("During verification " + round + ", serial port: torn."));
    assertTrue(words.get(1).startsWith("No check was running, serial port: torn."));
  }

  @Test
  void aHoldListsItsChecksAndThoseNotCheckedAgain() throws Exception {
    long marta = marta();
    long edwin = edwin();
    long off = verify(false, OFF);
    long hold = hold(off, marta, edwin);
    long good = verify(true, GOOD);
    ledger.say(new Fact.HoldLifted(hold, good, "within its limits"));
    marta();
    assertEquals(List.of(Kind.IN_QUESTION, Kind.VERIFICATION_OUT), kinds());
    String words = words(Kind.IN_QUESTION);
    assertTrue(words.contains("In question: 2 checks."), words);
    assertTrue(words.contains("It was lifted by verification " + good), words);
    assertTrue(
        words.endsWith(
            "Not checked again afterwards: Check " + edwin + " (bib 401, Edwin Thackerby)."),
        words);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says("out of its limits"));
    assertTrue(report.says("In question since the line was held: counts for nothing"));
  }

  @Test
  void checksInQuestionCountForNothingInEveryFigure() throws Exception {
    long marta = marta();
    long over = ledger.check("102", "Jun Takemizu", "OC", "312 ft/s", "312 ft/s", "312 ft/s");
    hold(verify(false, OFF), marta, over);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(2, report.summary().inQuestion());
    assertEquals(0, report.summary().withoutVerdict());
    assertEquals(Set.of(0), Set.copyOf(report.summary().outcomes().values()));
    assertTrue(report.says("○ in question, counting for nothing 2"), report.text());
    // Competitors, checks, four outcomes, no verdict, in question, readings, mean, deviation
    assertTrue(report.says("2 2 0 0 0 0 0 2 0 – –"), report.text());
    assertTrue(report.says("○ over, in question"), report.text());
    assertTrue(report.says("○ in question: the last check counts for nothing"), report.text());
    assertFalse(report.says("inside at attempt"), report.text());
  }

  @Test
  void theEditionForEverybodySaysWhatIsInQuestion() throws Exception {
    hold(verify(false, OFF), marta());
    Path pdf = folder.resolve("public.pdf");
    PrintedReport.report()
        .write(
            ledger.file(),
            pdf,
            new ReportEdition(false, Optional.empty(), Optional.empty()),
            step -> {});
    String text = PrintedReport.textOf(pdf);
    assertTrue(text.contains("101 OC 1 ○ within, in question"), text);
  }

  @Test
  void aHoldByHandThatIsLiftedLeavesNothingToCheckAgain() throws Exception {
    long marta = marta();
    long hold = hold(null, marta);
    ledger.say(new Fact.HoldLifted(hold, null, "it did not move"));
    assertEquals(List.of(Kind.IN_QUESTION), kinds());
    String words = words(Kind.IN_QUESTION);
    assertTrue(words.endsWith("It was lifted by hand: “it did not move”."), words);
  }

  @Test
  void aVerdictWhileTheLineWasHeldIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    hold(null);
    ledger.read("57.9 m/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(Kind.HELD, Kind.HELD, Kind.IN_QUESTION), kinds());
    marta();
    assertEquals(2 + 5, kinds().stream().filter(Kind.HELD::equals).count());
  }

  @Test
  void anOutcomeThatDoesNotFollowFromItsShotsIsFound() throws Exception {
    verify(true, OFF);
    assertEquals(List.of(Kind.VERIFICATION), kinds());
    assertTrue(
        words(Kind.VERIFICATION).contains("signed as passed, but: 3 shots: bias +2.700 ft/s"));
  }

  @Test
  void aPassWithFewerShotsThanAgreedIsFound() throws Exception {
    verify(true, "296.0 ft/s", "296.5 ft/s");
    assertTrue(words(Kind.VERIFICATION).endsWith("of 3 shots agreed."));
  }

  @Test
  void aShotAgainstAnotherReferenceIsFound() throws Exception {
    long round = begin();
    for (int i = 1; i <= 3; i++) {
      shot(round, i, "299 ft/s", i == 2 ? Speed.parse("299 ft/s") : BOW);
    }
    assertTrue(words(Kind.VERIFICATION).contains("shot 2 is held against 299 ft/s"));
  }

  @Test
  void outOfLimitsWithoutAHoldIsFound() throws Exception {
    long off = verify(false, OFF);
    assertEquals(List.of(Kind.HOLD, Kind.VERIFICATION_OUT), kinds());
    marta();
    assertEquals(
        "Verification " + off + " was out of its limits, and the line was not held.",
        words(Kind.HOLD));
  }

  @Test
  void aHoldThatListsOtherChecksIsFound() throws Exception {
    long marta = marta();
    long edwin = edwin();
    hold(verify(false, OFF), edwin);
    assertEquals(
        "The hold lists the checks "
            + edwin
            + "; decided since the last good verification were "
            + marta
            + ", "
            + edwin
            + ".",
        words(Kind.HOLD));
  }

  @Test
  void aHoldAfterAVerificationThatWasLiftedByHandIsFound() throws Exception {
    long hold = hold(verify(false, OFF));
    ledger.say(new Fact.HoldLifted(hold, null, "it will do"));
    assertTrue(words(Kind.HOLD).contains("was lifted by hand: “it will do”"));
  }

  @Test
  void aHoldLiftedByAnEarlierVerificationIsFound() throws Exception {
    long good = verify(true, GOOD);
    long hold = hold(verify(false, OFF));
    ledger.say(new Fact.HoldLifted(hold, good, "it was good this morning"));
    assertTrue(words(Kind.HOLD).endsWith("which did not pass after it."));
  }

  private List<Kind> liftedBy(int shots, String mostBias, String mostSpread) throws Exception {
    long hold = hold(verify(false, OFF));
    long round = begin(shots, mostBias, mostSpread);
    shots(round, Arrays.copyOf(GOOD, shots));
    ledger.say(new Fact.VerificationEnded(round, true, "as computed", null));
    ledger.say(new Fact.HoldLifted(hold, round, "within its limits"));
    return kinds();
  }

  @Test
  void aHoldLiftedByLooserLimitsIsFound() throws Exception {
    // 1 % of 296.4 ft/s is 2.964 ft/s
    assertTrue(liftedBy(2, "1 %", "1 ft/s").contains(Kind.HOLD_LOOSER));
    assertTrue(
        words(Kind.HOLD_LOOSER)
            .endsWith(
                "lifted the hold by looser limits: bias at most 1 % instead of 1 ft/s; 2 shots"
                    + " instead of 3."),
        words(Kind.HOLD_LOOSER));
  }

  @Test
  void aHoldLiftedByLimitsAsStrictIsNoFinding() throws Exception {
    // 0.3 % of 296.4 ft/s is 0.889 ft/s
    assertFalse(liftedBy(3, "0.3 %", "1 ft/s").contains(Kind.HOLD_LOOSER));
  }

  @Test
  void aLooserSpreadIsFoundToo() throws Exception {
    assertTrue(liftedBy(3, "1 ft/s", "1.1 ft/s").contains(Kind.HOLD_LOOSER));
  }

  @Test
  void aLineRefusedDuringAVerificationSaysDuringWhich() throws Exception {
    long round = begin();
    ledger.say(refused("torn", "It has no end."));
    assertTrue(
        words(Kind.LINE_REFUSED).startsWith("During verification " + round + ", serial port"),
        words(Kind.LINE_REFUSED));
  }

  @Test
  void theLinesOfAFloodAreCounted() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    ledger.say(refused("torn", "It has no end."));
    ledger.say(
        refused(
            Fact.LineRefused.FLOOD,
            "3421 further lines of 27368 bytes in all came within a second and were refused"));
    ledger.close("the gate went mad");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(
        report.says("Lines of the instrument that were refused (3,422 in 2 entries)"),
        report.text());
    assertTrue(report.says("3,422 lines refused"), report.text());
  }

  private Fact refused(String reason, String words) {
    return new Fact.LineRefused(
        ledger.standing().current().map(Check::number).orElse(null),
        "",
        reason,
        words,
        "serial port",
        "gate timer",
        Instant.EPOCH);
  }

  @Test
  void aCheckBeforeTheVerificationThatWasDueIsFound() throws Exception {
    plan(true, null, false);
    marta();
    assertEquals(List.of(Kind.VERIFICATION_DUE), kinds());
    assertTrue(words(Kind.VERIFICATION_DUE).endsWith("a verification was due (opening)."));
  }

  @Test
  void oneCompetitorTooManyIsFound() throws Exception {
    plan(false, 1, false);
    marta();
    assertEquals(List.of(), kinds());
    edwin();
    assertTrue(words(Kind.VERIFICATION_DUE).endsWith("a verification was due (interval)."));
  }

  @Test
  void closingWithoutTheVerificationIsFoundAndTheReasonTold() throws Exception {
    plan(false, null, true);
    marta();
    ledger.say(new Fact.StationClosed("thunderstorm"));
    assertEquals(List.of(Kind.VERIFICATION_SKIPPED), kinds());
    assertTrue(words(Kind.VERIFICATION_SKIPPED).endsWith("was due: “thunderstorm”."));
    ledger.say(new Fact.StationClosed(null));
    assertTrue(words(Kind.VERIFICATION_DUE).endsWith("no reason was signed."));
  }

  @Test
  void aBrokenOffVerificationIsToldAndHoldsNothing() throws Exception {
    long round = shots("310 ft/s");
    ledger.say(new Fact.VerificationEnded(round, false, "broken off after 1", "the string broke"));
    assertEquals(List.of(Kind.VERIFICATION_OUT), kinds());
    assertTrue(words(Kind.VERIFICATION_OUT).endsWith("broken off after 1, “the string broke”."));
  }

  @Test
  void aBiasThatWasSeenBeforeItWasBrokenOffIsNamedWithTheChecksSince() throws Exception {
    long marta = marta();
    long round = shots("299.0 ft/s", "299.2 ft/s");
    ledger.say(new Fact.VerificationEnded(round, false, "broken off after 2", "it was late"));
    hold(round, marta);
    assertEquals(List.of(Kind.IN_QUESTION, Kind.VERIFICATION_OUT), kinds());
    String words = words(Kind.VERIFICATION_OUT);
    assertTrue(
        words.endsWith(
            "broken off after 2, “it was late”. The shots taken were out of its limits already: 2"
                + " shots: bias +2.700 ft/s (more than 1 ft/s), spread 0.141 ft/s (at most 1 ft/s),"
                + " farthest shot 2 by 2.800 ft/s, of 3 shots agreed. Decided since the last good"
                + " verification: checks "
                + marta
                + "."),
        words);
    assertTrue(PrintedReport.of(ledger.file()).says("out of its limits, broken off: it was late"));
  }

  @Test
  void aBiasThatWasSeenAndHeldNothingIsFound() throws Exception {
    long round = shots("299.0 ft/s", "299.2 ft/s");
    ledger.say(new Fact.VerificationEnded(round, false, "broken off after 2", "it was late"));
    marta();
    assertEquals(List.of(Kind.HOLD, Kind.VERIFICATION_OUT), kinds());
    assertEquals(
        "Verification "
            + round
            + " was broken off with shots that were out of its limits already, and the line was not"
            + " held.",
        words(Kind.HOLD));
  }

  private long typed(long round, int number) throws Exception {
    return ledger.say(
        new Fact.VerificationShot(
            round,
            number,
            Speed.parse("296.5 ft/s"),
            "",
            "typed",
            "gate timer",
            Instant.EPOCH,
            BOW));
  }

  private void link(String state) throws Exception {
    ledger.say(new Fact.LinkChanged(state, "The port.", Instant.EPOCH));
  }

  private long passTyped() throws Exception {
    long round = begin();
    for (int shot = 1; shot <= 3; shot++) {
      typed(round, shot);
    }
    ledger.say(new Fact.VerificationEnded(round, true, "as computed", null));
    return round;
  }

  @Test
  void aPassOnTypedShotsAloneBesideAConnectedInstrumentIsFound() throws Exception {
    link("up");
    long round = passTyped();
    assertTrue(
        words(Kind.VERIFICATION_TYPED)
            .startsWith("Verification " + round + " passed on typed values alone"),
        words(Kind.VERIFICATION_TYPED));
    List<String> typed =
        findings().stream().filter(f -> f.kind() == Kind.TYPED).map(Finding::words).toList();
    assertEquals(3, typed.size());
    assertEquals("Verification " + round + ", shot 2: 296.5 ft/s.", typed.get(1));
  }

  @Test
  void typedShotsWhileTheInstrumentIsNotHeardAreOnlyTold() throws Exception {
    passTyped();
    link("up");
    link("closed");
    passTyped();
    assertEquals(List.of(Kind.TYPED), kinds().stream().distinct().toList());
  }

  @Test
  void aTypedShotAmongMeasuredOnesIsOnlyTold() throws Exception {
    link("up");
    long round = shots("296.0 ft/s", "296.5 ft/s");
    typed(round, 3);
    ledger.say(new Fact.VerificationEnded(round, true, "as computed", null));
    assertEquals(List.of(Kind.TYPED), kinds());
  }

  @Test
  void aVerificationInTheMiddleOfACheckIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    begin();
    ledger.read("57.9 m/s");
    ledger.verdict();
    ledger.close(null);
    assertTrue(words(Kind.ORDER).contains("was at the line"));
  }

  @Test
  void anotherPlanIsTold() throws Exception {
    plan(true, 20, true);
    verify(true, GOOD);
    assertEquals(List.of(), kinds());
    plan(false, null, false);
    assertEquals(
        "From here on verifications are due never; before it was at the opening, after 20"
            + " competitors, at the end.",
        words(Kind.EXCHANGED));
  }
}
