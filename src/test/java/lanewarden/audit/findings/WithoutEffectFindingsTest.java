package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import org.junit.jupiter.api.Test;

/** What is well signed of a dispute and has no effect all the same: the audit says so. */
class WithoutEffectFindingsTest extends DisputedLedger {
  @Test
  void aJudgeWhoCorrectedTheCheckBeforeRulingOnItIsFound() throws Exception {
    long over = dispute.over();
    long made =
        ledger.sayAs(
            judge, ProtestFact.CorrectionMade.ofBib(over, "402", "Solveig Brattlie", "misread"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    long protest = dispute.file(Cause.PROTEST, over);
    dispute.rule(judge, protest, Answer.DISMISSED, over);
    assertEquals(List.of(Kind.RULING), contradictions());
    assertTrue(only(Kind.RULING).contains("a correction"), only(Kind.RULING));
  }

  @Test
  void aProtestAgainstARecheckIsFoundAndItsRulingChangesNothing() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(judge, protest, Answer.UPHELD, beside);
    long second = dispute.file(Cause.PROTEST, beside);
    dispute.rule(judge, second, Answer.DISMISSED, beside);
    assertEquals(List.of(Kind.PROTEST, Kind.RULING), contradictions());
    String words = only(Kind.PROTEST);
    assertTrue(
        words.endsWith(
            "It has no effect: it is filed against a recheck, which stands"
                + " beside the check in dispute."),
        words);
    assertTrue(only(Kind.RULED).contains("What counts is recheck " + beside), only(Kind.RULED));
    String slip = slip(beside);
    assertTrue(slip.contains("Protest " + protest), slip);
    assertEquals(false, slip.contains("Protest " + second), slip);
    assertTrue(PrintedReport.of(ledger.file()).says("no effect: it is filed against a recheck"));
  }

  @Test
  void aRecheckUnderAProtestWithoutEffectIsFound() throws Exception {
    long over = dispute.over();
    long beside = dispute.recheck(dispute.file(Cause.PROTEST, over), "401", "57.9 m/s");
    long second = dispute.file(Cause.PROTEST, beside);
    dispute.recheck(second, "401", "57.9 m/s");
    assertEquals(List.of(Kind.RECHECK, Kind.PROTEST), contradictions());
    assertTrue(only(Kind.RECHECK).contains("which has no effect"), only(Kind.RECHECK));
  }

  @Test
  void aProtestFiledAndRuledOnWhileTheCheckStillRunsIsFound() throws Exception {
    long check = ledger.call("401", "Edwin Thackerby", "LB");
    long protest = dispute.file(Cause.PROTEST, check);
    dispute.rule(judge, protest, Answer.DISMISSED, check);
    ledger.read("57.9 m/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(Kind.PROTEST, Kind.RULING), contradictions());
    assertTrue(only(Kind.PROTEST).contains("the check in dispute goes on"), only(Kind.PROTEST));
  }

  @Test
  void aCorrectionThatMovesARecheckThatCountsToAnotherArcherIsFound() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(judge, protest, Answer.UPHELD, beside);
    long made =
        ledger.say(ProtestFact.CorrectionMade.ofBib(beside, "402", "Solveig Brattlie", "misread"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(Kind.CORRECTION), contradictions());
    assertTrue(only(Kind.CORRECTION).contains("the ruling rests on"), only(Kind.CORRECTION));
    assertEquals(beside, ledger.standing().past("401").all().get(0).number());
  }
}
