package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ReportEdition;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import org.junit.jupiter.api.Test;

/** What the audit finds about holds of the line, and what is in question by them. */
class HoldFindingsTest extends InstrumentLedgerTest {
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
}
