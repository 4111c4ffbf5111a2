package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.ProtestFact;
import lanewarden.quantity.Mass;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the audit finds of competitors whom the roster does not hold so, and of other rosters. */
class RosterFindingsTest {
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

  private void assertFound(long entry, String words) throws Exception {
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(Kind.ROSTER), audited.contradictions());
    assertEquals(List.of(entry), audited.entries(Kind.ROSTER));
    assertTrue(audited.only(Kind.ROSTER).contains(words), audited.only(Kind.ROSTER));
  }

  @Test
  void aCheckOfABibThatNoRosterHoldsIsFound() throws Exception {
    long ghost = ledger.check("999", "Ghost", "OC", "299 ft/s", "298 ft/s", "297 ft/s");
    assertFound(ghost, "(bib 999, Ghost): the roster in force has no bib 999.");
  }

  @Test
  void aCheckWithAnotherArrowThanTheRosterHasIsFound() throws Exception {
    long heavy = ledger.call("101", "Marta Olesund", "OC", Mass.parse("900 gr"));
    ledger.close("rain");
    assertFound(heavy, "the arrow mass was signed as 900 gr, but the roster has 362 gr");
  }

  @Test
  void aCheckUnderAnotherNameOrDivisionThanTheRosterHasIsFound() throws Exception {
    long other = ledger.check("101", "Somebody Else", "LB", "57 m/s");
    assertFound(
        other,
        "the name was signed as Somebody Else, but the roster has Marta Olesund; the division was"
            + " signed as LB, but the roster has OC");
  }

  @Test
  void figuresThatAnOlderVersionDidNotStateContradictNothing() throws Exception {
    ledger.call("101", "Marta Olesund", "OC", null);
    ledger.close("rain");
    assertEquals(List.of(), Audited.of(ledger.file()).contradictions());
  }

  @Test
  void aCorrectionToABibThatTheRosterDoesNotHoldIsFound() throws Exception {
    long check = ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
    long made = ledger.say(ProtestFact.CorrectionMade.ofBib(check, "999", "Ghost", "misread"));
    assertFound(made, "Correction " + made + ": the roster in force has no bib 999.");
  }

  @Test
  void aLateEntryByAnotherRosterContradictsNothingAndIsToldWithItsSigner() throws Exception {
    ledger.check("401", "Edwin Thackerby", "LB", "57 m/s");
    ledger.say(
        ScriptedLedger.roster(
            """
            bib,name,division,arrow-mass
            101,Marta Olesund,LB,362 gr
            102,Jun Takemizu,OC,371 gr
            401,Edwin Thackerby,LB,362 gr
            113,New Guy,OC,362 gr
            """));
    ledger.check("113", "New Guy", "OC", "299 ft/s", "298 ft/s", "297 ft/s");
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(), audited.contradictions());
    String words = audited.only(Kind.EXCHANGED);
    assertTrue(words.contains("Signed by " + ScriptedLedger.OFFICIAL + "."), words);
    assertTrue(words.contains("1 added (113 New Guy is new in OC)"), words);
    assertTrue(words.contains("7 removed (7 Ada Brink is gone, "), words);
    assertTrue(words.contains(", and 3 more)"), words);
    assertTrue(
        words.contains(
            "2 changed (101 Marta Olesund goes from OC to LB, 102 Jun Takemizu has other figures"
                + " of bow or arrow)"),
        words);
  }

  @Test
  void aCheckBeforeAnyRosterIsFound() throws Exception {
    try (ScriptedLedger bare = ScriptedLedger.bare(folder.resolve("bare.ledger"))) {
      bare.adopt(ScriptedLedger.RULES);
      bare.call("101", "Marta Olesund", "OC");
      bare.close("rain");
      assertTrue(Audited.of(bare.file()).only(Kind.ROSTER).endsWith("no roster was in force."));
    }
  }

  @Test
  void aRosterThatIsNotWhatItsHashSaysIsFound() throws Exception {
    long wrong =
        ledger.say(new Fact.RosterAdopted("roster.csv", "0".repeat(64), ScriptedLedger.ROSTER));
    assertFound(wrong, "This roster cannot be read, so nothing shows who could be called");
  }
}
