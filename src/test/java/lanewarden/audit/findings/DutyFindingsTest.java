package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Outcome;
import lanewarden.journal.ProtestFact;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Speed;
import lanewarden.rules.Phase;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the audit finds of things signed at a line that nobody was on duty at, or that was shut. */
class DutyFindingsTest {
  private static final String LONGBOW = "Edwin Thackerby";

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

  private void signOut() throws Exception {
    ledger.say(new FrameFact.OfficialSignedOut(ScriptedLedger.OFFICIAL));
  }

  private void assertFound(String words, Long... entries) throws Exception {
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(Kind.UNATTENDED), audited.contradictions());
    assertEquals(List.of(entries), audited.entries(Kind.UNATTENDED));
    assertTrue(audited.only(Kind.UNATTENDED).endsWith(words), audited.only(Kind.UNATTENDED));
  }

  @Test
  void aWholeCheckAfterTheLineWasClosedIsFoundOnce() throws Exception {
    signOut();
    ledger.say(new Fact.StationClosed(null));
    long check = ledger.check("401", LONGBOW, "LB", "57 m/s");
    assertFound(
        ": 4 entries were signed although nobody was signed in, and the line was not open.",
        check,
        check + 1,
        check + 2,
        check + 3);
  }

  @Test
  void aReadingAfterTheOfficialSignedOutIsFound() throws Exception {
    ledger.call("401", LONGBOW, "LB");
    signOut();
    long reading = ledger.read("57 m/s");
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    ledger.verdict();
    ledger.close(null);
    assertFound(": 1 entry was signed although nobody was signed in.", reading);
  }

  @Test
  void aSignInWithoutAnOpeningOfTheLineIsNotEnough() throws Exception {
    signOut();
    ledger.say(new Fact.StationClosed(null));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    long check = ledger.call("401", LONGBOW, "LB");
    assertFound("signed although the line was not open.", check);
  }

  @Test
  void whatAnotherEnrolledKeySignsOfTheCheckAtTheLineIsFound() throws Exception {
    SigningKey other = ledger.enrol("Wim Ezra", Role.OFFICIAL);
    ledger.call("401", LONGBOW, "LB");
    long ended = ledger.sayAs(other, new Fact.CheckClosed(ledger.now().number(), "rain"));
    assertFound("somebody else was signed in than whose key signed.", ended);
  }

  @Test
  void aProgramThatRanAnewWithoutASignInSignsForNobody() throws Exception {
    ledger.call("401", LONGBOW, "LB");
    ledger.reopen();
    long reading = ledger.read("57 m/s");
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    ledger.verdict();
    ledger.close(null);
    assertFound("nobody was signed in.", reading);
  }

  @Test
  void aProgramThatWasKilledAndRanAnewWithASignInContradictsNothing() throws Exception {
    ledger.call("401", LONGBOW, "LB");
    ledger.reopen();
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    ledger.read("57 m/s");
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(), Audited.of(ledger.file()).contradictions());
  }

  @Test
  void whatTheOfficeSignsBesideTheLineContradictsNothing() throws Exception {
    SigningKey other = ledger.enrol("Wim Ezra", Role.JUDGE);
    ledger.call("401", LONGBOW, "LB");
    long typed = ledger.take("75.9 m/s", "typed");
    ledger.verdict();
    ledger.take("58.9 m/s", "typed");
    ledger.take("58.9 m/s", "typed");
    ledger.verdict();
    ledger.close(null);
    long check = ledger.now().number();
    ledger.say(new Fact.StationClosed(null));
    ledger.say(new Fact.PhaseBegan(Phase.DURING));
    ledger.say(new FrameFact.HeadWitnessed("Range West", "12-aaaaaaaaaaaa"));
    long made =
        ledger.say(
            ProtestFact.CorrectionMade.ofReading(
                check, typed, Speed.parse("57.9 m/s"), "turned digits"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    ledger.sayAs(
        other,
        new Fact.VerdictGiven(
            check,
            ledger.now().ruleBook(),
            Outcome.WITHIN,
            ledger.now().judgedBy(ledger.rule()).reason(),
            ledger.now().standing(),
            null));
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(), audited.words(Kind.UNATTENDED));
  }
}
