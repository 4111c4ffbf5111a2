package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.audit.Audited;
import lanewarden.audit.Dispute;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.slip.Slips;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.ledger.SigningKey;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is well signed of a dispute and has no effect all the same: the audit says so. */
class WithoutEffectFindingsTest {
  @TempDir Path folder;
  private ScriptedLedger ledger;
  private Dispute dispute;
  private SigningKey judge;
  private SigningKey other;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    dispute = Dispute.in(ledger);
    judge = dispute.judge();
    other = dispute.other();
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

  private String only(Kind kind) throws Exception {
    return audited().only(kind);
  }

  private String slip(long check) throws Exception {
    Path pdf = folder.resolve("slip.pdf");
    new Slips(Clock.fixed(PrintedReport.MADE, ZoneOffset.UTC), SignedPapers::of)
        .write(ledger.file(), String.valueOf(check), pdf);
    String text = PrintedReport.textOf(pdf);
    assertEquals(List.of(), Stream.of("Thackerby", "glared").filter(text::contains).toList());
    return text;
  }

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
