package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

/** What the audit finds about protests, rulings and corrections. */
class ProtestFindingsTest extends DisputedLedger {
  @Test
  void theSlipsOfBothChecksPrintTheRulingAndBothOutcomes() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, over);
    String words = "Referral " + protest + ": no ruling. Check " + over + ": ▲ over.";
    String open = slip(over);
    assertTrue(open.contains(words + " What counts until a ruling: check " + over + "."), open);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(judge, protest, Answer.UPHELD, beside);
    words =
        "Referral "
            + protest
            + ": upheld. Check "
            + over
            + ": ▲ over. Recheck "
            + beside
            + ": ● within. What counts: recheck "
            + beside
            + ".";
    for (long check : List.of(over, beside)) {
      assertTrue(slip(check).contains(words), slip(check));
    }
  }

  @Test
  void aProtestWithRecheckAndRulingIsNoContradictionAndIsTold() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    long ruling = dispute.rule(judge, protest, Answer.UPHELD, beside);
    assertEquals(List.of(), contradictions());
    assertEquals(
        "Check "
            + over
            + " (bib 401, Edwin Thackerby) ended over. Referral "
            + protest
            + " by “Edwin Thackerby”: “the gate glared”. Recheck "
            + beside
            + ": within. It was upheld: “it was within”. What counts is recheck "
            + beside
            + "; consequence: “may shoot on”.",
        only(Kind.RULED));
    assertEquals(
        List.of(protest, over, beside, ruling),
        audited().findings().stream()
            .filter(f -> f.kind() == Kind.RULED)
            .findFirst()
            .orElseThrow()
            .entries());
  }

  @Test
  void aRecheckOfAnotherArcherOrDivisionTakesNothingAway() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, over);
    long stranger = dispute.recheck(protest, "402", "57.9 m/s");
    long ruling = dispute.rule(judge, protest, Answer.UPHELD, stranger);
    assertEquals(List.of(Kind.RECHECK, Kind.RULING), contradictions());
    assertEquals(
        "Entry %d rules on protest %d, but has no effect: the recheck that is to stand is of another bib or another division than the check in dispute."
            .formatted(ruling, protest),
        only(Kind.RULING));
    assertTrue(only(Kind.PROTEST_OPEN).contains("ended over"));
    assertEquals(over, ledger.standing().past("401").all().get(0).number());
    long second = dispute.file(Cause.PROTEST, over);
    dispute.rule(
        judge,
        second,
        Answer.UPHELD,
        dispute.recheckOf("OC", second, "401", "290 ft/s", "290 ft/s", "290 ft/s"));
    assertEquals(over, ledger.standing().past("401").all().get(0).number());
  }

  @Test
  void aProtestWithoutARulingIsToLookAt() throws Exception {
    dispute.file(Cause.REFERRAL, dispute.over());
    assertEquals(List.of(), contradictions());
    assertTrue(only(Kind.PROTEST_OPEN).contains("the gate glared"));
  }

  @Test
  void aRulingByTheWrongPersonIsFoundAndChangesNothing() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(other, protest, Answer.UPHELD, beside);
    assertEquals(List.of(Kind.RULING), contradictions());
    assertTrue(only(Kind.RULING).contains("not enrolled as a judge's"), only(Kind.RULING));
    assertTrue(only(Kind.PROTEST_OPEN).contains("Recheck " + beside));
    assertEquals(over, ledger.standing().past("401").all().get(0).number());
  }

  @Test
  void aJudgeWhoRulesOnACheckOfTheirOwnIsFound() throws Exception {
    long over = dispute.over();
    ledger.sayAs(judge, new Fact.ConditionTicked(over, "full draw"));
    long protest = dispute.file(Cause.REFERRAL, over);
    dispute.rule(judge, protest, Answer.DISMISSED, over);
    assertTrue(contradictions().contains(Kind.RULING), contradictions().toString());
    assertTrue(
        only(Kind.RULING).contains("signed something of the check in dispute"), only(Kind.RULING));
  }

  @Test
  void aSecondRulingAndOneThatNamesAnotherCheckAreFound() throws Exception {
    long over = dispute.over();
    long elsewhere = ledger.check("402", "Solveig Brattlie", "LB", "57 m/s");
    long protest = dispute.file(Cause.REFERRAL, over);
    dispute.rule(judge, protest, Answer.UPHELD, elsewhere);
    dispute.rule(judge, protest, Answer.DISMISSED, over);
    dispute.rule(judge, protest, Answer.UPHELD, over);
    assertEquals(List.of(Kind.RULING, Kind.RULING), contradictions());
    assertTrue(only(Kind.RULED).contains("It was dismissed"), only(Kind.RULED));
  }

  @Test
  void aRecheckThatNoProtestAllowsIsFoundAndCountsForNothing() throws Exception {
    dispute.over();
    dispute.recheck(3, "401", "57.9 m/s");
    assertEquals(List.of(Kind.RECHECK), contradictions());
    assertTrue(only(Kind.RECHECK).contains("which the ledger does not hold"));
    assertEquals(1, ledger.standing().past("401").all().size());
  }

  @Test
  void aRecheckOfAnotherBibAfterTheRulingOrOfASettledProtestIsFound() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, over);
    dispute.recheck(protest, "402", "57.9 m/s");
    dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(judge, protest, Answer.DISMISSED, over);
    dispute.recheck(protest, "401", "57.8 m/s");
    List<String> found =
        audited().findings().stream()
            .filter(f -> f.kind() == Kind.RECHECK)
            .map(Finding::words)
            .toList();
    assertTrue(found.get(0).contains("of another bib"), found.toString());
    assertTrue(found.get(1).contains("had ended within"), found.toString());
    assertTrue(found.get(2).contains("after the ruling"), found.toString());
    assertEquals(List.of(Kind.RECHECK), contradictions().stream().distinct().toList());
  }

  @Test
  void aCorrectionByTwoPersonsIsListedAndItsVerdictFollows() throws Exception {
    long check = dispute.over();
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofDivision(check, "OC", "entered as open compound"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    ledger.verdict();
    assertEquals(List.of(), contradictions());
    assertEquals(
        "Check "
            + check
            + " (bib 401, Edwin Thackerby), division: OC in the place of LB, because “entered as"
            + " open compound”. Two persons signed it.",
        only(Kind.CORRECTED));
    assertEquals(2, audited().findings().stream().filter(f -> f.kind() == Kind.TAKEN_BACK).count());
  }

  @Test
  void aCorrectionWhoseVerdictIsMissingIsFound() throws Exception {
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofDivision(dispute.over(), "OC", "entered so"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(Kind.VERDICT_MISSING), contradictions());
  }

  @Test
  void aConfirmationByTheSameKeyIsFoundAndChangesNothing() throws Exception {
    long check = dispute.over();
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofBib(check, "402", "Solveig Brattlie", "misread"));
    ledger.say(new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(Kind.CORRECTION), contradictions());
    assertTrue(only(Kind.CORRECTION).contains("by the person who made the correction"));
    assertTrue(only(Kind.CORRECTION_OPEN).endsWith("It has no effect."));
    assertEquals(1, ledger.standing().checksOf("401").size());
  }

  @Test
  void whoGotASecondKeyDoesNotConfirmTheirOwnCorrectionWithIt() throws Exception {
    long check = dispute.over();
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofBib(check, "402", "Solveig Brattlie", "misread"));
    SigningKey second = ledger.enrol(ScriptedLedger.OFFICIAL, Role.OFFICIAL);
    ledger.sayAs(second, new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(Kind.CORRECTION), contradictions());
    assertTrue(only(Kind.CORRECTION).contains("with the same key or another of theirs"));
    assertEquals(1, ledger.standing().checksOf("401").size());
  }

  @Test
  void whoGotASecondKeyDoesNotRuleOnTheirOwnCheckWithIt() throws Exception {
    long check = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, check);
    SigningKey second = ledger.enrol(ScriptedLedger.OFFICIAL, Role.JUDGE);
    dispute.rule(second, protest, Answer.DISMISSED, check);
    assertEquals(List.of(Kind.RULING), contradictions());
    assertTrue(
        only(Kind.RULING).contains("signed something of the check in dispute"), only(Kind.RULING));
  }

  @Test
  void aConfirmationWithTheOrganizersKeyShowsNoSecondPerson() throws Exception {
    long made =
        ledger.say(
            ProtestFact.CorrectionMade.ofBib(dispute.over(), "402", "Solveig Brattlie", "misread"));
    ledger.sayAs(ledger.organizer(), new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(Kind.CORRECTION), contradictions());
    assertTrue(only(Kind.CORRECTION).contains("the organizer's, which names nobody"));
  }

  @Test
  void otherPersonsConfirmAndRuleWithReplacedKeysAsWell() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    dispute.rule(ledger.replace(judge, "lost"), protest, Answer.DISMISSED, over);
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofBib(over, "402", "Solveig Brattlie", "misread"));
    ledger.sayAs(ledger.replace(other, "lost"), new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(), contradictions());
    assertTrue(only(Kind.CORRECTED).endsWith("Two persons signed it."));
  }

  @Test
  void whatWasFoundBeforeABibWasCorrectedNamesTheOneThatCountsAndTheFormer() throws Exception {
    long check = ledger.call("301", "Ines Tveit", "LB");
    ledger.take("57 m/s", "typed");
    ledger.verdict();
    ledger.close(null);
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofBib(check, "402", "Solveig Brattlie", "misread"));
    long given = ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    assertEquals(
        "Check %d (bib 402, Solveig Brattlie; until entry %d bib 301), shot 1: 57 m/s."
            .formatted(check, given),
        only(Kind.TYPED));
    long more =
        ledger.say(ProtestFact.CorrectionMade.ofBib(check, "401", "Edwin Thackerby", "misread"));
    assertTrue(
        only(Kind.TYPED).contains("(bib 402, Solveig Brattlie;"), "nobody confirmed this one");
    long last = ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(more));
    assertEquals(
        "Check %d (bib 401, Edwin Thackerby; until entry %d bib 402; until entry %d bib 301), shot 1: 57 m/s."
            .formatted(check, last, given),
        only(Kind.TYPED));
  }

  @Test
  void aMeasuredReadingIsNotCorrectedWhoeverSignsIt() throws Exception {
    long check = dispute.over();
    long reading = ledger.now().shots().get(0).sequence();
    long made =
        ledger.say(
            ProtestFact.CorrectionMade.ofReading(
                check, reading, Speed.parse("57 m/s"), "it looked slow"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(Kind.CORRECTION), contradictions());
    assertTrue(only(Kind.CORRECTION).contains("was measured"), only(Kind.CORRECTION));
  }

  @Test
  void aVerdictOnACheckThatLeftIsStillOutOfOrderWithoutACorrection() throws Exception {
    dispute.over();
    ledger.verdict();
    assertEquals(List.of(Kind.ORDER), contradictions());
  }

  @Test
  void theReportShowsOriginalAndRecheckSideBySideAndBothSigners() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.REFERRAL, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(judge, protest, Answer.UPHELD, beside);
    long typed = ledger.call("402", "Solveig Brattlie", "LB");
    long reading = ledger.take("58.9 m/s", "typed");
    ledger.close("the archer left");
    long made =
        ledger.say(
            ProtestFact.CorrectionMade.ofReading(
                typed, reading, Speed.parse("57.9 m/s"), "digits exchanged"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    ledger.verdict();
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says("Protests and corrections"), report.text());
    assertTrue(report.says("Referral " + protest), report.text());
    assertTrue(report.says("Check " + over + " 401 Edwin Thackerby, LB"), report.text());
    assertTrue(report.says("58.2 m/s; 58.3 m/s; 58.4 m/s"), report.text());
    assertTrue(report.says("Recheck " + beside + " 401 Edwin Thackerby, LB counts"), report.text());
    assertTrue(report.says("Ruling: upheld by Judge Elm"), report.text());
    assertTrue(report.says("Consequence: may shoot on"), report.text());
    assertTrue(report.says("58.9 m/s → 57.9 m/s: digits exchanged"), report.text());
    assertTrue(report.says("second: Wim Ezra"), report.text());
    assertTrue(report.says("Disputed by protest " + protest + ": upheld"), report.text());
    assertTrue(report.says("Recheck under protest " + protest), report.text());
    assertTrue(report.says("within by the ruling on protest " + protest), report.text());
    assertEquals(List.of(), report.contradictions());
  }
}
