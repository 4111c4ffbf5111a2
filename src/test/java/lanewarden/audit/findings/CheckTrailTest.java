package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.Dispute;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.ProtestFact;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Of which checks a contradiction is told: they have no slip. */
class CheckTrailTest extends InstrumentLedgerTest {
  private long clean;

  @BeforeEach
  void shootACleanCheck() throws Exception {
    clean = ledger.check("102", "Jun Takemizu", "OC", "299 ft/s", "299 ft/s", "299 ft/s");
  }

  private List<Kind> against(long check) throws Exception {
    Evidence evidence = Audited.of(ledger.file()).evidence();
    return evidence.contradictions(evidence.standing().find(check).orElseThrow()).stream()
        .map(Finding::kind)
        .toList();
  }

  private void assertAgainst(Kind kind, long check) throws Exception {
    assertEquals(List.of(kind), against(check));
    assertEquals(List.of(), against(clean));
  }

  private void refuse(Long check) throws Exception {
    ledger.say(
        new Fact.LineRefused(
            check,
            ScriptedLedger.bytes("330.0 ft/s"),
            "bad status",
            "Shoot again.",
            "serial port",
            "gate timer",
            ledger.instant()));
  }

  private long shootOn() throws Exception {
    for (int shot = 0; shot < 3; shot++) {
      ledger.read("299 ft/s");
    }
    ledger.verdict();
    ledger.close(null);
    return ledger.now().number();
  }

  @Test
  void aGoodLineRefusedInACheckIsToldOfIt() throws Exception {
    refuse(ledger.call("101", "Marta Olesund", "OC"));
    assertAgainst(Kind.REFUSED, shootOn());
  }

  @Test
  void aGoodLineRefusedAsNobodysIsToldOfTheCheckAtTheLine() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    refuse(null);
    assertAgainst(Kind.REFUSED, shootOn());
  }

  @Test
  void aRecheckUnderAProtestThatIsNotThereIsToldOfItself() throws Exception {
    Dispute.in(ledger).over();
    assertAgainst(Kind.RECHECK, Dispute.in(ledger).recheck(999_999, "401", "57.9 m/s"));
  }

  @Test
  void aReadingFlaggedAfterTheCheckHadLeftIsToldOfIt() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    long check = shootOn();
    ledger.say(new Fact.ReadingFlagged(check, check + 1, "jump", "far apart"));
    assertEquals(Kind.ORDER, against(check).get(0));
    assertEquals(List.of(), against(clean));
  }

  @Test
  void aReadingFlaggedWhileNobodyWasOnDutyIsToldOfIt() throws Exception {
    long check = ledger.call("101", "Marta Olesund", "OC");
    long reading = ledger.read("299 ft/s");
    ledger.say(new FrameFact.OfficialSignedOut(ScriptedLedger.OFFICIAL));
    ledger.say(new Fact.ReadingFlagged(check, reading, "jump", "far apart"));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    assertEquals(Kind.UNATTENDED, against(check).get(0));
    assertEquals(List.of(), against(clean));
  }

  /** Nobody can tell which check is the one that the other was shot beside. */
  @Test
  void twoChecksAtTheLineAtOnceAreBothToldOf() throws Exception {
    long first = ledger.call("101", "Marta Olesund", "OC");
    ledger.call("401", "Edwin Thackerby", "LB");
    assertEquals(List.of(Kind.ORDER), against(first));
    assertEquals(List.of(Kind.ORDER), against(ledger.now().number()));
    assertEquals(List.of(), against(clean));
  }

  @Test
  void aCheckThatAHoldLeavesOutIsToldOfIt() throws Exception {
    long marta = marta();
    hold(verify(false, OFF), clean);
    assertEquals(List.of(Kind.HOLD), against(marta));
    assertEquals(List.of(Kind.HOLD), against(clean));
  }

  @Test
  void aHoldThatWasOwedIsToldOfTheChecksThatItLeavesOut() throws Exception {
    verify(false, OFF);
    long later = ledger.call("101", "Marta Olesund", "OC");
    assertEquals(List.of(Kind.HOLD), against(clean));
    assertEquals(List.of(), against(later));
  }

  @Test
  void aCorrectionThatNobodyConfirmedTakesNoSlipAway() throws Exception {
    ledger.say(ProtestFact.CorrectionMade.ofBib(clean, "999", "Nobody", "no such bib"));
    assertEquals(List.of(Kind.ROSTER), Audited.of(ledger.file()).contradictions());
    assertEquals(List.of(), against(clean));
  }
}
