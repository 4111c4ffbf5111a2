package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import lanewarden.audit.slip.SlipSearch;
import lanewarden.audit.slip.Slips;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What slips, tables and figures say of a check in whose place another counts. */
class DisputedPapersTest {
  @TempDir Path folder;
  private ScriptedLedger ledger;
  private Dispute dispute;
  private long within;
  private Slips.Written slip;
  private long protest;
  private long recheck;

  /** Within at first, protested against; the recheck was over, and the protest was upheld. */
  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    dispute = Dispute.in(ledger);
    within = ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    slip = write("101");
    protest = dispute.file(Cause.PROTEST, within);
    recheck = dispute.recheckOf("OC", protest, "101", "320 ft/s", "320 ft/s", "320 ft/s");
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private void uphold() throws Exception {
    dispute.rule(dispute.judge(), protest, Answer.UPHELD, recheck);
  }

  private Slips.Written write(String which) throws Exception {
    return new Slips(Clock.fixed(PrintedReport.MADE, ZoneOffset.UTC), SignedPapers::of)
        .write(ledger.file(), which, folder.resolve("slip.pdf"));
  }

  private SlipSearch.Found find(Slips.Written of) throws Exception {
    return SlipSearch.find(ledger.file(), of.text(), SignedPapers::of);
  }

  @Test
  void aSlipThatWasOverruledSinceNoLongerStands() throws Exception {
    assertTrue(find(slip).stands(), "a protest alone changes nothing");
    uphold();
    SlipSearch.Found found = find(slip);
    assertFalse(found.stands(), found.toString());
    assertTrue(found.printed().orElseThrow().startsWith("within ("), found.toString());
    assertTrue(found.now().orElseThrow().startsWith("overruled (within) ("), found.toString());
    assertTrue(found.now().orElseThrow().endsWith("; check " + recheck + " counts"));
  }

  @Test
  void theSlipOfACheckThatWasOverruledSaysSoInItsLargestLetters() throws Exception {
    uphold();
    Slips.Written after = write("" + within);
    String text = PrintedReport.textOf(folder.resolve("slip.pdf"));
    assertTrue(text.contains("Bib 101 ○ overruled (within)"), text);
    assertTrue(find(after).stands(), "it tells what counts");
    write("" + recheck);
    text = PrintedReport.textOf(folder.resolve("slip.pdf"));
    assertTrue(text.contains("Bib 101 ▲ over"), text);
    assertTrue(text.contains("What follows: a judge's ruling on protest " + protest), text);
  }

  @Test
  void aSlipOfTheRecheckFallsWhenTheProtestIsDismissed() throws Exception {
    Slips.Written beside = write("" + recheck);
    dispute.rule(dispute.judge(), protest, Answer.DISMISSED, within);
    assertFalse(find(beside).stands());
    assertTrue(find(slip).stands(), "the check in dispute still counts");
  }

  @Test
  void theLastRulingOnADisputeSaysWhatCountsOfTheRecheckOfAnEarlierOneToo() throws Exception {
    uphold();
    Slips.Written beside = write("" + recheck);
    assertTrue(find(beside).stands());
    long again = dispute.file(Cause.PROTEST, within);
    dispute.rule(dispute.judge(), again, Answer.DISMISSED, within);
    assertFalse(find(beside).stands(), "the first check counts again");
    assertTrue(find(slip).stands());
  }

  @Test
  void aSlipOfAWrongBibNoLongerStandsOnceThatIsCorrected() throws Exception {
    long wrong = ledger.check("103", "Ingeborg Hollin", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
    Slips.Written before = write("" + wrong);
    long correction =
        ledger.say(ProtestFact.CorrectionMade.ofBib(wrong, "104", "Rufus Elm", "misheard"));
    assertTrue(find(before).stands(), "one signature corrects nothing");
    ledger.sayAs(dispute.other(), new ProtestFact.CorrectionConfirmed(correction));
    SlipSearch.Found found = find(before);
    assertFalse(found.stands());
    assertTrue(found.printed().orElseThrow().contains("bib 103"), found.toString());
    assertTrue(found.now().orElseThrow().contains("bib 104"), found.toString());
  }

  @Test
  void theTableOfChecksSaysWhatCounts() throws Exception {
    List<List<String>> waiting = table("waiting");
    assertEquals(List.of("", "" + protest, "yes", ""), disputeOf(waiting, 1));
    assertEquals(List.of("" + protest, "", "no", ""), disputeOf(waiting, 2));
    uphold();
    long wrong = ledger.check("103", "Ingeborg Hollin", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
    long correction =
        ledger.say(ProtestFact.CorrectionMade.ofBib(wrong, "104", "Rufus Elm", "misheard"));
    ledger.sayAs(dispute.other(), new ProtestFact.CorrectionConfirmed(correction));
    List<List<String>> ruled = table("ruled");
    assertEquals(
        List.of("", "" + protest, "no: check " + recheck + " does", ""), disputeOf(ruled, 1));
    assertEquals(List.of("" + protest, "", "yes", ""), disputeOf(ruled, 2));
    assertEquals(List.of("", "", "yes", "" + correction), disputeOf(ruled, 3));
  }

  private List<List<String>> table(String name) throws Exception {
    Path out = folder.resolve(name);
    new Export(SignedPapers::of).forThePublic(ledger.file(), out, progress -> {});
    return Rfc4180.read(Files.readString(out.resolve("checks.csv")));
  }

  /** The cells about protests and corrections of a row. */
  private static List<String> disputeOf(List<List<String>> table, int row) {
    int first = table.get(0).indexOf("recheck of protest");
    return table.get(row).subList(first, first + 4);
  }

  @Test
  void theReportCountsHowCompetitorsEnded() throws Exception {
    String ended = "Competitors ended %s %d";
    PrintedReport before = PrintedReport.of(ledger.file());
    assertTrue(before.says(ended.formatted("● within", 1)), before.text());
    uphold();
    PrintedReport after = PrintedReport.of(ledger.file());
    assertTrue(after.says(ended.formatted("● within", 0)), after.text());
    assertTrue(after.says(ended.formatted("▲ over", 1)), after.text());
  }
}
