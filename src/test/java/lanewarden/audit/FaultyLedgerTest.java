package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.findings.LedgerFold;
import lanewarden.audit.press.Announcer;
import lanewarden.journal.Fact;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ledgers that are not as they should be are reported, not refused. */
class FaultyLedgerTest {
  @TempDir Path folder;

  private ScriptedLedger ledger() throws Exception {
    return ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  @Test
  void everyFaultStandsInFrontOfWhatCanBeRead() throws Exception {
    ScriptedLedger ledger = ledger();
    long changed = ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
    ledger.check("402", "Solveig Brattlie", "LB", "56 m/s");
    ledger.tamperWith(changed);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertFalse(report.summary().sound());
    assertTrue(report.says("The ledger is not sound."));
    int faults = report.text().indexOf("Faults of the ledger");
    assertTrue(faults > 0 && faults < report.text().indexOf("What an opponent should look at"));
    report.summary().faults().forEach(f -> assertTrue(report.says(f.words()), f.words()));
    assertTrue(report.summary().faults().stream().anyMatch(f -> f.sequence() == changed));
    assertTrue(report.says("402 Solveig Brattlie"));
  }

  @Test
  void aRowThatRestsOnAFaultyEntrySaysSo() throws Exception {
    ScriptedLedger ledger = ledger();
    long changed = ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
    ledger.tamperWith(changed);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says("Rests on faulty entries " + changed + ", " + (changed + 1)));
  }

  @Test
  void anEntryThatCannotBeUnderstoodIsAFinding() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      long strange = ledger.signRaw("reading-taken", "{\"check\":1}");
      ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.summary().sound());
      assertEquals(List.of(Kind.UNREADABLE), report.contradictions());
      assertTrue(report.says("Entry " + strange + " of kind reading-taken cannot be read"));
      assertTrue(report.says("401 Edwin Thackerby"));
    }
  }

  @Test
  void aReadingOfACheckThatIsNotThereIsAFinding() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.signRaw("check-closed", "{\"check\":4711}");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.found(Kind.UNREADABLE).get(0).contains("there is no check 4711"));
    }
  }

  @Test
  void aFaultOfOurOwnAtOneEntryIsSaidAndTheOthersAreLookedAt() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      long opening = ledger.say(new Fact.StationOpened("gate timer", "profile", "Lanewarden"));
      ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
      LedgerFold fold =
          new LedgerFold(
              opened -> {
                if (opened.profile().equals("profile")) {
                  throw new IllegalStateException("nobody thought of this");
                }
                return SignedPapers.of(opened);
              },
              new Announcer(progress -> {}),
              0);
      Audited audited = new Audited(fold.finish(Verification.of(ledger.file(), List.of(), fold)));
      assertEquals(List.of(opening), audited.entries(Kind.UNREADABLE));
      String words = audited.only(Kind.UNREADABLE);
      assertTrue(words.contains("could not be looked at to the end"), words);
      assertTrue(words.contains("nobody thought of this"), words);
      assertTrue(words.contains("a fault of this program"), words);
      assertEquals(List.of(Kind.UNREADABLE), audited.contradictions());
      assertEquals(1, audited.evidence().standing().checksOf("401").size());
    }
  }

  @Test
  void anEntryOfAnUnknownKindIsShown() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.signRaw("bow-weighed", "{}");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertEquals(List.of(), report.contradictions());
      assertTrue(report.says("The kind “bow-weighed” is none that this program knows."));
    }
  }

  @Test
  void aFaultyRuleBookIsAFindingAndTheChecksAreStillListed() throws Exception {
    try (ScriptedLedger ledger = ScriptedLedger.bare(folder.resolve("event.ledger"))) {
      ledger.signRaw(
          "rule-book-adopted",
          "{\"file\":\"r.toml\",\"sha256\":\"" + "0".repeat(64) + "\",\"text\":\"format = 9\"}");
      ledger.openLine(ScriptedLedger.ROSTER);
      ledger.call("401", "Edwin Thackerby", "LB");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertEquals(List.of(Kind.UNREADABLE, Kind.RULE), report.contradictions());
      assertTrue(report.says("401 Edwin Thackerby"));
    }
  }

  @Test
  void whatIsNoLedgerAtAllIsRefusedAndLeavesNoReport() throws Exception {
    Path file = Files.writeString(folder.resolve("notes.txt"), "not a ledger");
    Path pdf = folder.resolve("report.pdf");
    assertThrows(
        LedgerException.class, () -> PrintedReport.report().write(file, pdf, progress -> {}));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(file), left.toList());
    }
  }
}
