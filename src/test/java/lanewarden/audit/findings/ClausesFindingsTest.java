package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.SetUpStated;
import lanewarden.metrology.PublicDraw;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Percent;
import lanewarden.rules.Consequence;
import lanewarden.rules.Phase;
import lanewarden.rules.RuleBook;
import org.junit.jupiter.api.Test;

/** What the audit finds about bow and arrow, conditions, draws, grounds and what follows a fail. */
class ClausesFindingsTest extends ClausesLedgerTest {
  private static final String SEED = "41523 61345 22516 44163";

  private Fact.DrawMade draw(String seed, List<String> pool) {
    return new Fact.DrawMade(
        "RS", seed, "50 %", pool, PublicDraw.of(seed, Percent.parse("50 %"), pool).drawn());
  }

  @Test
  void aCheckWithFiguresAndTicksContradictsNothing() throws Exception {
    call("4", "BH", null);
    state("360 gr", "60 lbf");
    ledger.say(new Fact.ConditionTicked(ledger.now().number(), "full draw"));
    ledger.read("290 ft/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(), contradictions());
    assertEquals(List.of(), words(Kind.SET_UP));
  }

  @Test
  void aVerdictWithoutTheTicksIsFound() throws Exception {
    call("4", "BH", null);
    state("360 gr", "60 lbf");
    ledger.read("290 ft/s");
    ledger.verdict(Outcome.WITHIN, "reading 290 ft/s, limit 300 ft/s");
    ledger.close(null);
    assertFound(Kind.VERDICT, "to be ticked: full draw");
  }

  @Test
  void aShotBeforeTheFiguresAreStatedIsFound() throws Exception {
    call("4", "BH", null);
    ledger.read("290 ft/s");
    ledger.close("stopped");
    assertFound(Kind.ORDER, "to be stated first: arrow mass");
  }

  @Test
  void aTickThatTheRuleDoesNotNameIsFound() throws Exception {
    call("4", "BH", null);
    ledger.say(new Fact.ConditionTicked(ledger.now().number(), "half draw"));
    ledger.close("stopped");
    assertFound(Kind.ORDER, "“half draw” was ticked");
  }

  @Test
  void figuresThatWereStatedOtherwiseBeforeAreListedAndTheVerdictIsTakenBack() throws Exception {
    call("4", "BH", null);
    state("350 gr", "60 lbf");
    ledger.verdict();
    state("365 gr", "60 lbf");
    ledger.say(new Fact.ConditionTicked(ledger.now().number(), "full draw"));
    ledger.read("290 ft/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(), contradictions());
    assertFound(Kind.SET_UP, "arrow mass 350 gr, then 365 gr, after 0 shots");
    List<String> back = words(Kind.TAKEN_BACK);
    assertEquals(2, back.size(), back.toString());
    assertTrue(back.get(0).contains("when bow and arrow were stated anew"), back.get(0));
    assertTrue(back.get(1).contains("in the place of “not admitted”"), back.get(1));
    assertTrue(back.get(1).contains("was given “within”"), back.get(1));
  }

  @Test
  void anotherConsequenceThanTheRuleHasInThatPhaseIsFound() throws Exception {
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    call("8", "PH", null);
    ledger.read("301 ft/s");
    ledger.verdict(Outcome.OVER, "reading 301 ft/s, limit 300 ft/s", Consequence.RECHECK);
    ledger.close(null);
    assertFound(Kind.FOLLOWS, "by the rule follows: the archer is barred from the event");
    assertFound(Kind.PHASE, "during the event");
  }

  @Test
  void aFailOfWhichNothingWasSignedIsShownButContradictsNothing() throws Exception {
    call("8", "PH", null);
    ledger.read("301 ft/s");
    ledger.verdict(Outcome.OVER, "reading 301 ft/s, limit 300 ft/s");
    ledger.close(null);
    assertEquals(List.of(), contradictions());
    assertFound(Kind.FOLLOWS_UNSAID, "a re-check");
  }

  @Test
  void aCheckAfterABarIsFound() throws Exception {
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    ledger.check("8", "Hal", "PH", "301 ft/s");
    ledger.check("8", "Hal", "PH", "299 ft/s");
    assertFound(Kind.ADMISSION, "after the last fail follows: the archer is barred");
  }

  @Test
  void checksOfDivisionsThatAreNotCheckedAreFound() throws Exception {
    ledger.check("6", "Max", "NM", "290 ft/s");
    call("7", "NO", null);
    assertTrue(words(Kind.ADMISSION).toString().contains("NM is not measured"));
    assertTrue(words(Kind.ADMISSION).toString().contains("nothing of division NO is checked"));
  }

  @Test
  void aCheckWithoutTheGroundsItNeedsIsFoundAndGroundsAreListed() throws Exception {
    ledger.check("5", "Eve", "NJ", "290 ft/s");
    assertFound(Kind.ADMISSION, "without grounds, although a judge names whom to check");
    call("5", "NJ", "another bow");
    ledger.close("stopped");
    assertFound(Kind.GROUNDS, "“another bow”");
    assertEquals(1, words(Kind.ADMISSION).size());
  }

  @Test
  void groundsThatAreNoLapseOfTheRuleDoNotOpenAPass() throws Exception {
    call("5", "NJ", "named by judge Ostrander");
    ledger.read("290 ft/s");
    ledger.verdict();
    ledger.close(null);
    call("5", "NJ", "another string");
    assertFound(Kind.ADMISSION, "had ended within");
  }

  @Test
  void aDrawByTheRecipeContradictsNothingAndGovernsWhoIsCalled() throws Exception {
    Fact.DrawMade draw = draw(SEED, List.of("1", "2", "3"));
    ledger.say(draw);
    ledger.check(draw.drawn().get(0), name(draw.drawn().get(0)), "RS", "290 ft/s");
    assertEquals(List.of(), contradictions());
    String other = draw.pool().stream().filter(b -> !draw.drawn().contains(b)).findFirst().get();
    ledger.check(other, name(other), "RS", "290 ft/s");
    assertFound(Kind.ADMISSION, "the competitor was not drawn");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says(SEED));
    assertTrue(report.says(String.join(", ", draw.drawn())));
  }

  @Test
  void aCheckBeforeTheDrawIsFound() throws Exception {
    ledger.check("1", "Ann", "RS", "290 ft/s");
    assertFound(Kind.ADMISSION, "had not been drawn");
  }

  @Test
  void aDrawOfOthersThanTheSeedGivesIsFound() throws Exception {
    Fact.DrawMade draw = draw(SEED, List.of("1", "2", "3"));
    ledger.say(
        new Fact.DrawMade(
            draw.division(), draw.seed(), draw.share(), draw.pool(), draw.drawn().subList(0, 1)));
    assertFound(Kind.DRAW, "from its seed are drawn");
  }

  @Test
  void aDrawFromOthersThanTheRosterHasIsFound() throws Exception {
    ledger.say(draw(SEED, List.of("1", "2")));
    assertFound(Kind.DRAW, "was made from 1, 2; the roster in force has 1, 2, 3");
  }

  @Test
  void aDrawThatCannotBeRepeatedOrThatTheRuleDoesNotAskForIsFound() throws Exception {
    ledger.say(new Fact.DrawMade("RS", "heads", "50 %", List.of("1", "2", "3"), List.of("1", "2")));
    assertFound(Kind.DRAW, "cannot be repeated");
    ledger.say(new Fact.DrawMade("BH", SEED, "100 %", List.of("4"), List.of("4")));
    assertTrue(words(Kind.DRAW).toString().contains("draws nobody there"));
  }

  @Test
  void aDrawForAnotherShareThanTheRuleHasIsFound() throws Exception {
    List<String> pool = List.of("1", "2", "3");
    ledger.say(
        new Fact.DrawMade(
            "RS", SEED, "100 %", pool, PublicDraw.of(SEED, Percent.parse("100 %"), pool).drawn()));
    assertFound(Kind.DRAW, "was made for 100 %, but the rule has 50 %");
  }

  @Test
  void throwingAgainUnderTheSameRulesIsFoundAndUnderOthersShown() throws Exception {
    List<String> pool = List.of("1", "2", "3");
    ledger.say(draw(SEED, pool));
    ledger.say(draw("11111 22222 33333 44444", pool));
    assertFound(Kind.DRAW, "was drawn again");
    ledger.adopt(RULES.replace("300 ft/s", "290 ft/s"), "the limit was misprinted");
    ledger.say(draw("99999 22222 33333 44444", pool));
    assertFound(Kind.DRAWN_ANEW, "under another rule book");
  }

  @Test
  void anotherRuleBookUnderAnEditionThatWasInForceIsShown() throws Exception {
    String edition = "edition = \"1\"";
    assertTrue(RULES.contains(edition));
    String other = RULES.replace("300 ft/s", "290 ft/s");
    ledger.adopt(other.replace(edition, "edition = \"2\""), "the limit was misprinted");
    ledger.adopt(RULES, "it was not");
    assertEquals(List.of(), words(Kind.EDITION));
    ledger.adopt(other, "it was");
    assertFound(Kind.EDITION, "was put in force as edition “1”, which another");
    assertEquals(List.of(), contradictions());
  }

  @Test
  void aRuleBookIsShownWithItsReasonAndOnlyTheOrganizerPutsItInForce() throws Exception {
    String changed = RULES.replace("300 ft/s", "290 ft/s");
    ledger.adopt(changed, "the limit was misprinted");
    assertTrue(words(Kind.EXCHANGED).get(0).contains("The reason: “the limit was misprinted”."));
    assertEquals(List.of(), contradictions());
    RuleBook again = RuleBook.read("rule-book.toml", RULES.getBytes(StandardCharsets.UTF_8));
    ledger.say(new Fact.RuleBookAdopted("rule-book.toml", again.sha256(), RULES));
    assertFound(Kind.RULE, "by another key than the organizer's");
    assertTrue(words(Kind.EXCHANGED).get(1).contains("No reason was signed."));
  }

  @Test
  void theReportPrintsSetUpConditionsPhaseGroundsAndWhatFollows() throws Exception {
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    call("4", "BH", "asked for by judge Ostrander");
    ledger.say(
        new SetUpStated(
            ledger.now().number(),
            Mass.parse("365 gr"),
            Force.parse("60 lbf"),
            Force.parse("62 lbf")));
    ledger.say(new Fact.ConditionTicked(ledger.now().number(), "full draw"));
    ledger.read("301 ft/s");
    ledger.verdict();
    ledger.close(null);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says("An arrow of less than 6 gr/lb is not admitted (draw weight as set)."));
    assertTrue(report.says("A random share of 50 % is checked."));
    assertTrue(report.says("365 gr 60 lbf as set, 62 lbf certified"));
    assertTrue(report.says("Ticked: full draw"));
    assertTrue(report.says("Opened during the event"));
    assertTrue(report.says("Called on the grounds: asked for by judge Ostrander"));
    assertTrue(report.says("What follows: a judge rules"));
  }
}
