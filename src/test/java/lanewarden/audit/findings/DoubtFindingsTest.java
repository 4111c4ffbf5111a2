package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import org.junit.jupiter.api.Test;

/** What the audit finds about readings that are not believed. */
class DoubtFindingsTest extends ClausesLedgerTest {
  private static final String JUMP =
      "shot 2: 290 ft/s is 15.0 ft/s from shot 1 (275 ft/s), more than 10 ft/s";

  private long call() throws Exception {
    ledger.adopt(
        RULES
            + division("JU", "jump = \"10 ft/s\"")
                .replace("counted = 1", "counted = 2")
                .replace("shots = 2", "shots = 3"),
        "a jump is asked about");
    return ledger.call("12", "Ivo", "JU");
  }

  private long flag(long check, long reading, String kind) throws Exception {
    return ledger.say(new Fact.ReadingFlagged(check, reading, kind, JUMP));
  }

  @Test
  void aJumpThatWasFlaggedAndLetCountContradictsNothing() throws Exception {
    long check = call();
    ledger.read("275 ft/s");
    long reading = ledger.read("290 ft/s");
    flag(check, reading, "jump");
    ledger.say(new Fact.ReadingKept(check, reading, "seen by both"));
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(), contradictions());
    assertFound(Kind.DOUBT, JUMP);
    assertFound(Kind.DOUBT, "It was let count (entry ");
    assertFound(Kind.KEPT, "seen by both");
  }

  @Test
  void aJumpThatNobodyLetCountIsInNoFigure() throws Exception {
    long check = call();
    ledger.read("275 ft/s");
    flag(check, ledger.read("290 ft/s"), "jump");
    ledger.close("it rained");
    PrintedReport report = PrintedReport.of(ledger.file());
    // Competitors, checks, four outcomes, no verdict, in question, readings, mean, deviation
    assertTrue(report.says("1 1 0 0 0 0 1 0 1 275.00 ft/s –"), report.text());
    assertTrue(report.says("290 ft/s in doubt"), report.text());
    // 362 gr at 275 ft/s, not at 290: half of 0.023457 kg times (83.82 m/s) squared
    assertTrue(report.says("82.4 J"), report.text());
  }

  @Test
  void aJumpWhoseReadingBeforeWasDeclaredVoidIsInDoubtNoMore() throws Exception {
    long check = call();
    long first = ledger.read("275 ft/s");
    flag(check, ledger.read("290 ft/s"), "jump");
    assertFound(Kind.DOUBT, "more than 10 ft/s.");
    long voided = ledger.declareVoid(first, "the light flickered");
    assertFound(
        Kind.DOUBT, "It counts since another reading was declared void (entry " + voided + ").");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says("Was in doubt: shot 2: 290 ft/s"));
    assertFalse(report.says("290 ft/s in doubt"), "the table marks what is in doubt now");
  }

  @Test
  void aReadingInDoubtThatTurnsOutImpossibleSaysSo() throws Exception {
    long check = call();
    ledger.read("275 ft/s");
    flag(check, ledger.read("290 ft/s"), "jump");
    long stated =
        ledger.say(
            new SetUpStated(
                check,
                Mass.parse("400 gr"),
                Force.parse("40 lbf"),
                null,
                Length.parse("27 in"),
                Length.parse("9 in")));
    assertFound(
        Kind.DOUBT, "It is void since bow and arrow were stated anew (entry " + stated + ").");
  }

  @Test
  void aVerdictOverAReadingInDoubtDoesNotFollow() throws Exception {
    long check = call();
    ledger.read("275 ft/s");
    flag(check, ledger.read("290 ft/s"), "jump");
    ledger.verdict(Outcome.WITHIN, "highest of 2 readings 290 ft/s, limit 300 ft/s");
    ledger.close(null);
    assertTrue(contradictions().contains(Kind.VERDICT));
  }

  /** A further shot, however like the one in doubt, does not make that one count. */
  @Test
  void aVerdictOverTwoMisreadsAlikeDoesNotFollow() throws Exception {
    ledger.adopt(
        RULES
            + division("OU", "outlier = \"Grubbs at 5 %\"\noutlier-least = \"3 ft/s\"")
                .replace("\"highest\"", "\"mean\"")
                .replace("counted = 1", "counted = 4")
                .replace("shots = 2", "shots = 5"),
        "an odd one is asked about");
    long check = ledger.call("13", "Moe", "OU");
    ledger.read("299 ft/s");
    ledger.read("299 ft/s");
    flag(check, ledger.read("270 ft/s"), "stands out");
    ledger.read("271 ft/s");
    ledger.verdict(Outcome.WITHIN, "mean 284.75 ft/s, limit 300 ft/s");
    ledger.close(null);
    assertTrue(contradictions().contains(Kind.VERDICT));
    assertFalse(
        words(Kind.DOUBT).stream().anyMatch(found -> found.contains("It counts")),
        words(Kind.DOUBT)::toString);
  }

  @Test
  void aJumpThatNobodyFlaggedIsFound() throws Exception {
    call();
    ledger.read("275 ft/s");
    ledger.read("290 ft/s");
    ledger.verdict(Outcome.WITHIN, "highest of 2 readings 290 ft/s, limit 300 ft/s");
    ledger.close(null);
    assertTrue(
        words(Kind.ORDER).stream().anyMatch(w -> w.contains("nothing was signed about")),
        words(Kind.ORDER)::toString);
  }

  @Test
  void aFlagThatTheRuleDoesNotRaiseIsFound() throws Exception {
    long check = call();
    flag(check, ledger.read("275 ft/s"), "stands out");
    ledger.read("276 ft/s");
    ledger.verdict();
    ledger.close(null);
    assertFound(Kind.ORDER, "nothing of that kind speaks against it");
  }

  @Test
  void aReadingLetCountWithoutADoubtIsFound() throws Exception {
    long check = call();
    ledger.say(new Fact.ReadingKept(check, ledger.read("275 ft/s"), "why not"));
    ledger.read("276 ft/s");
    ledger.verdict();
    ledger.close(null);
    assertFound(Kind.ORDER, "nothing had been found against");
  }

  @Test
  void endingACheckWithAReadingInDoubtThatWouldBeOverUsesARecheck() throws Exception {
    long check = call();
    ledger.read("290 ft/s");
    flag(check, ledger.read("301 ft/s"), "jump");
    ledger.close("the archer walked off");
    assertTrue(ledger.now().usesRecheck());
    assertFound(Kind.NO_VERDICT, "It uses up a re-check");
  }

  @Test
  void aReadingInDoubtThatWasDeclaredVoidUsesNone() throws Exception {
    long check = call();
    ledger.read("290 ft/s");
    long reading = ledger.read("301 ft/s");
    flag(check, reading, "jump");
    ledger.declareVoid(reading, "a bird");
    ledger.close("the archer was called away");
    assertFalse(ledger.now().usesRecheck());
  }

  @Test
  void whoseReadingsAreImpossibleAgainAndAgainIsNamed() throws Exception {
    ledger.adopt(RULES + division("IM", "").replace("voids = 1", "voids = 0"), "another division");
    ledger.say(
        ScriptedLedger.roster(
            """
            bib,name,division,arrow-mass,draw-weight,draw-length,brace-height
            8,Una,IM,400 gr,40 lbf,27 in,9 in
            """));
    for (int attempt = 1; attempt <= 2; attempt++) {
      long check =
          ledger.open(
              new Fact.CheckOpened(
                  "8",
                  "Una",
                  "IM",
                  attempt,
                  Mass.parse("400 gr"),
                  Force.parse("40 lbf"),
                  null,
                  Length.parse("27 in"),
                  Length.parse("9 in"),
                  null,
                  null));
      long reading = ledger.read("310 ft/s");
      ledger.say(new Fact.ReadingFlagged(check, reading, "impossible", "shot 1: too much"));
      ledger.say(
          new Fact.VerdictGiven(
              check,
              ledger.now().ruleBook(),
              Outcome.NOT_DECIDED,
              "1 void reading, 0 forgiven",
              List.of(),
              null));
      ledger.close(null);
    }
    assertEquals(List.of(), contradictions());
    assertFound(Kind.UNDECIDED_AGAIN, "2 checks one after the other ended undecided");
    assertEquals(2, words(Kind.IMPOSSIBLE).size());
  }

  @Test
  void aCheckEndedWithAReadingInDoubtSaysSo() throws Exception {
    long check = call();
    ledger.read("275 ft/s");
    flag(check, ledger.read("290 ft/s"), "jump");
    ledger.close("the archer left");
    assertFound(Kind.NO_VERDICT, "no official had said whether they count");
  }
}
