package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the audit finds when it looks at every step with the rule beside it. */
class FindingsTest {
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

  private Audited audited() throws Exception {
    return Audited.of(ledger.file());
  }

  private List<Kind> contradictions() throws Exception {
    return audited().contradictions();
  }

  private String words(Kind kind) throws Exception {
    return audited().only(kind);
  }

  private List<Long> entries(Kind kind) throws Exception {
    return audited().entries(kind);
  }

  private void shoot(String... speeds) throws Exception {
    for (String speed : speeds) {
      ledger.read(speed);
    }
  }

  @Test
  void honestLedgerHasNoFindings() throws Exception {
    ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "308 ft/s", "310 ft/s");
    ledger.check("101", "Marta Olesund", "OC", "302 ft/s", "301 ft/s", "300 ft/s");
    ledger.check("401", "Edwin Thackerby", "LB", "58.2 m/s", "57.9 m/s");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(List.of(), report.summary().findings());
    assertTrue(report.says("None found: every verdict follows from its readings and its rule"));
    assertTrue(report.says("None found: no void or typed readings"));
  }

  @Test
  void aWrongVerdictIsFound() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    shoot("312 ft/s", "312 ft/s", "312 ft/s");
    long signed = ledger.verdict(Outcome.WITHIN, "mean 300 ft/s, limit 300 ft/s");
    ledger.close(null);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(List.of(Kind.VERDICT), report.contradictions());
    assertEquals(List.of(signed), report.summary().contradictions().get(0).entries());
    assertTrue(
        report.says(
            "was signed as “within”, but the rule gives “over” (mean 312 ft/s, limit 300 ft/s"
                + " plus 3 % = 309 ft/s)"));
  }

  @Test
  void aVerdictThatWasTakenBackIsRecomputedToo() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    shoot("312 ft/s", "312 ft/s");
    long last = ledger.read("312 ft/s");
    ledger.verdict(Outcome.WITHIN, "no figures");
    ledger.declareVoid(last, "not at full draw");
    shoot("290 ft/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(Kind.VERDICT), contradictions());
    List<String> back = audited().words(Kind.TAKEN_BACK);
    assertEquals(2, back.size(), back.toString());
    assertTrue(back.get(0).contains("when a reading was declared void"), back.get(0));
    assertTrue(back.get(1).contains("in the place of “within” (no figures)"), back.get(1));
  }

  @Test
  void aVerdictBeforeTheRuleDecidesIsFound() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    shoot("290 ft/s");
    ledger.verdict(Outcome.WITHIN, "looked slow");
    ledger.close(null);
    assertEquals(List.of(Kind.VERDICT), contradictions());
    assertTrue(words(Kind.VERDICT).contains("at least 2 more readings"));
  }

  @Test
  void aMissingVerdictIsFound() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    shoot("312 ft/s", "312 ft/s", "312 ft/s");
    ledger.close("archer had to leave");
    assertEquals(List.of(Kind.VERDICT_MISSING), contradictions());
  }

  @Test
  void aReadingTakenAfterTheRuleDecidedIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    shoot("57 m/s", "58.5 m/s");
    ledger.verdict();
    ledger.close(null);
    assertTrue(contradictions().contains(Kind.ORDER));
  }

  @Test
  void aVerdictThatListsOtherReadingsIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    shoot("57 m/s");
    ledger.say(
        new Fact.VerdictGiven(
            ledger.now().number(),
            ledger.now().ruleBook(),
            Outcome.WITHIN,
            "reading 57 m/s within, limit 58 m/s",
            List.of(99L)));
    ledger.close(null);
    assertTrue(contradictions().contains(Kind.READINGS));
  }

  @Test
  void aVerdictByAnotherRuleBookIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    shoot("57 m/s");
    ledger.say(
        new Fact.VerdictGiven(
            ledger.now().number(),
            "ab".repeat(32),
            Outcome.WITHIN,
            "by the old book",
            ledger.now().standing()));
    ledger.close(null);
    assertEquals(List.of(Kind.RULE, Kind.RULE), contradictions());
    assertTrue(audited().findings().get(1).words().contains("does not hold (abababababab…)"));
  }

  @Test
  void aDivisionWithoutARuleIsFound() throws Exception {
    ledger.call("901", "Nobody Ruled", "ZZ");
    assertEquals(List.of(Kind.RULE), contradictions());
    assertTrue(words(Kind.RULE).contains("no division ZZ"));
  }

  @Test
  void aRecheckThatTheRuleDoesNotAllowIsFound() throws Exception {
    ledger.check("401", "Edwin Thackerby", "LB", "59 m/s", "59 m/s", "59 m/s");
    ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
    assertEquals(List.of(Kind.ADMISSION), contradictions());
    assertTrue(words(Kind.ADMISSION).contains("after the last fail follows: a judge rules"));
  }

  @Test
  void aWrongAttemptNumberIsFound() throws Exception {
    ledger.say(new Fact.CheckOpened("101", "Marta Olesund", "OC", 3, null, null));
    assertEquals(List.of(Kind.ORDER), contradictions());
  }

  @Test
  void aVerdictAfterTheCheckWasClosedIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    shoot("57 m/s");
    ledger.close("rain");
    ledger.verdict();
    assertEquals(List.of(Kind.ORDER), contradictions());
  }

  @Test
  void aSignInUnderAnotherNameIsFound() throws Exception {
    ledger.say(new Fact.OfficialSignedIn("Somebody Else"));
    assertEquals(List.of(Kind.NAME), contradictions());
    assertTrue(words(Kind.NAME).contains(ScriptedLedger.OFFICIAL));
  }

  @Test
  void aReasonWordedOtherwiseIsShownButContradictsNothing() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    shoot("57 m/s");
    ledger.verdict(Outcome.WITHIN, "fine");
    ledger.close(null);
    assertEquals(List.of(), contradictions());
    assertTrue(words(Kind.REASON).contains("reads “fine”"));
  }

  @Test
  void whatAnOpponentShouldLookAtIsListedWithItsEntries() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    long typed = ledger.take("299.0 ft/s", "typed");
    long shown = ledger.take("299.0 ft/s", "simulator");
    long voided = ledger.declareVoid(shown, "not shot at all");
    long torn =
        ledger.say(
            new Fact.LineRefused(
                ledger.now().number(),
                "JDI5/w==",
                "torn",
                "The line was cut off.",
                "serial port",
                "gate timer",
                ledger.instant()));
    long lost = ledger.say(new Fact.LinkChanged("lost", "The port went away.", ledger.instant()));
    ledger.close("archer had to leave");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(List.of(typed), entries(Kind.TYPED));
    assertEquals(List.of(shown), entries(Kind.NOT_MEASURED));
    assertEquals(List.of(shown, voided), entries(Kind.VOID));
    assertEquals(List.of(torn), entries(Kind.LINE_REFUSED));
    assertEquals(List.of(lost), entries(Kind.LINK_LOST));
    assertTrue(words(Kind.NO_VERDICT).contains("after 2 shots: “archer had to leave”"));
    assertTrue(report.says("Bytes: $29\\xFF"));
    assertTrue(report.says("“archer had to leave”"));
    assertEquals(List.of(), report.contradictions());
  }

  @Test
  void aCheckStillRunningIsNotAContradiction() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    shoot("300 ft/s");
    assertEquals(List.of(), contradictions());
    assertTrue(words(Kind.NO_VERDICT).contains("still running"));
  }

  @Test
  void anotherRuleBookOnTheWayIsShownAndEachCheckKeepsItsOwn() throws Exception {
    ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
    ledger.adopt(ScriptedLedger.RULES.replace("58 m/s", "56 m/s"));
    ledger.check("402", "Solveig Brattlie", "LB", "57 m/s", "57 m/s", "57 m/s");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(words(Kind.EXCHANGED).contains("another rule book"));
    assertEquals(List.of(), report.contradictions());
    assertTrue(report.says("At most 58 m/s."));
    assertTrue(report.says("At most 56 m/s."));
  }

  @Test
  void aClockThatGoesBackIsShown() throws Exception {
    ledger.setClock(ScriptedLedger.START.minusSeconds(3600));
    ledger.say(new FrameFact.OfficialSignedOut(ScriptedLedger.OFFICIAL));
    assertTrue(words(Kind.CLOCK).contains("earlier than an entry before it"));
  }

  @Test
  void aReadingInAnotherUnitIsJudgedByTheGoverningOne() throws Exception {
    // Own arithmetic: 190.2 ft/s is 57.97296 m/s, within 58 m/s.
    ledger.call("401", "Edwin Thackerby", "LB");
    shoot("190.2 ft/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(), audited().findings());
  }
}
