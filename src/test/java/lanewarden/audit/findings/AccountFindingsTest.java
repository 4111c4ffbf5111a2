package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.rules.Consequence;
import lanewarden.rules.Phase;
import org.junit.jupiter.api.Test;

/** What the audit finds about who is called again, and how the report keeps short. */
class AccountFindingsTest extends ClausesLedgerTest {

  @Test
  void aPhaseThatWentBackIsFoundWithItsReason() throws Exception {
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    assertEquals(List.of(), words(Kind.PHASE_BACK));
    ledger.say(new Fact.PhaseBegan(Phase.BEFORE, "begun by mistake"));
    assertFound(Kind.PHASE_BACK, "again; it was during the event. The reason: “begun by mistake”.");
    ledger.say(new Fact.PhaseBegan(Phase.AFTER));
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    assertTrue(words(Kind.PHASE_BACK).get(1).contains("No reason was signed."));
    assertEquals(2, words(Kind.PHASE).size());
  }

  @Test
  void whoWasNotAdmittedAndWhatOlderVersionsSignedToFollowContradictNothing() throws Exception {
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    call("4", "BH", null);
    state("350 gr", "60 lbf");
    ledger.verdict(
        Outcome.NOT_ADMITTED, ledger.now().judgedBy(ledger.rule()).reason(), Consequence.JUDGE);
    ledger.close(null);
    call("4", "BH", null);
    assertEquals(List.of(), contradictions());
    assertTrue(
        PrintedReport.of(ledger.file())
            .says("What follows: the archer may come back with another bow or arrow"));
  }

  @Test
  void aCheckThatEndedOverButForATickIsSaidToUseARecheckAndDoes() throws Exception {
    for (int attempt = 1; attempt <= 3; attempt++) {
      call("4", "BH", null);
      state("365 gr", "60 lbf");
      ledger.read("301 ft/s");
      ledger.close("the archer left");
    }
    assertTrue(
        words(Kind.NO_VERDICT)
            .get(0)
            .endsWith(
                "By its readings it was over, and only lacked: to be ticked: full draw. It uses up"
                    + " a re-check."),
        words(Kind.NO_VERDICT).get(0));
    assertFound(Kind.ADMISSION, "after 2 fails; the rule allows 1 re-check");
  }

  @Test
  void anotherClassIsNoGroundsInTheSameClass() throws Exception {
    ledger.adopt(RULES.replace("[\"another bow\"]", "[\"another class\"]"), "lapses");
    call("5", "NJ", "named by judge Ostrander");
    ledger.read("290 ft/s");
    ledger.verdict();
    ledger.close(null);
    call("5", "NJ", "another class");
    assertFound(Kind.ADMISSION, "had ended within");
  }

  @Test
  void checksThatEndByTooWideASpreadOneAfterTheOtherAreNamed() throws Exception {
    ledger.adopt(
        RULES
            + division("SP", "spread = \"5 ft/s\"")
                .replace("ed = 1", "ed = 2")
                .replace("shots = 2", "shots = 3"),
        "spread");
    ledger.check("11", "Kai", "SP", "290 ft/s", "310 ft/s");
    ledger.check("10", "Jon", "SP", "280 ft/s", "290 ft/s");
    ledger.check("10", "Jon", "SP", "280 ft/s", "290 ft/s");
    assertEquals(List.of(), words(Kind.UNDECIDED_AGAIN));
    ledger.check("11", "Kai", "SP", "291 ft/s", "311 ft/s");
    assertFound(Kind.UNDECIDED_AGAIN, "2 checks one after the other");
    assertFound(Kind.UNDECIDED_AGAIN, "with 310 ft/s");
    assertEquals(List.of(), contradictions());
  }

  @Test
  void anUnchangedDivisionIsPrintedOnceAndOneWithoutChecksWithoutATable() throws Exception {
    ledger.check("8", "Hal", "PH", "290 ft/s");
    ledger.adopt(RULES.replaceFirst("300 ft/s", "299 ft/s"), "the limit was misprinted");
    ledger.check("9", "Ida", "PH", "291 ft/s");
    PrintedReport report = PrintedReport.of(ledger.file());
    String first = Wording.shortHash(ledger.standing().ruleBooks().get(0).sha256());
    String second = Wording.shortHash(ledger.standing().ruleBooks().get(1).sha256());
    assertTrue(report.says("Unchanged since rule book " + first + ": RS, NJ, PH, NM, NO."));
    assertTrue(
        report.says(
            "PH Division PH Limit 300 ft/s, no tolerance. Unchanged in the rule books "
                + first
                + ", "
                + second
                + ". Competitors"));
    assertEquals(2, report.times("BH Division BH Limit"));
    assertEquals(1, report.times("PH Division PH Limit"));
    assertEquals(1, report.times("RS Division RS Limit"));
    assertEquals(1, report.times("Std. deviation"));
    assertTrue(report.says("NO None Limit no limit. Unchanged in the rule books"));
    ledger.adopt(RULES.replaceFirst("300 ft/s", "299 ft/s") + "# a comment\n", "a comment");
    assertTrue(
        PrintedReport.of(ledger.file())
            .says("No division came with this rule book or changed with it."));
  }
}
