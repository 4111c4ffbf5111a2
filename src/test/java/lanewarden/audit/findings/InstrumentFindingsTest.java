package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

/** What the audit finds about the instrument's verifications. */
class InstrumentFindingsTest extends InstrumentLedgerTest {
  @Test
  void anHonestDayWithVerificationsHasNoFindings() throws Exception {
    plan(true, 1, true);
    verify(true, GOOD);
    marta();
    verify(true, GOOD);
    edwin();
    verify(true, GOOD);
    ledger.say(new Fact.StationClosed(null));
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(List.of(), report.summary().findings());
    assertTrue(report.says("bias +0.067 ft/s (at most 1 ft/s), spread 0.451 ft/s"));
    assertTrue(report.says("296.5 ft/s against 296.4 ft/s"));
  }

  @Test
  void aLineRefusedDuringAVerificationIsListedAsOfIt() throws Exception {
    Fact.LineRefused torn =
        new Fact.LineRefused(
            null, "JDI5/w0K", "torn", "It was cut.", "serial port", "timer", Instant.EPOCH);
    long round = begin();
    ledger.say(torn);
    ledger.say(new Fact.VerificationEnded(round, false, "broken off", "rain"));
    ledger.say(torn);
    List<String> words =
        findings().stream().filter(f -> f.kind() == Kind.LINE_REFUSED).map(Finding::words).toList();
    assertEquals(2, words.size());
    assertTrue(words.get(0).startsWith("During verification " + round + ", serial port: torn."));
    assertTrue(words.get(1).startsWith("No check was running, serial port: torn."));
  }

  @Test
  void anOutcomeThatDoesNotFollowFromItsShotsIsFound() throws Exception {
    verify(true, OFF);
    assertEquals(List.of(Kind.VERIFICATION), kinds());
    assertTrue(
        words(Kind.VERIFICATION).contains("signed as passed, but: 3 shots: bias +2.700 ft/s"));
  }

  @Test
  void aPassWithFewerShotsThanAgreedIsFound() throws Exception {
    verify(true, "296.0 ft/s", "296.5 ft/s");
    assertTrue(words(Kind.VERIFICATION).endsWith("of 3 shots agreed."));
  }

  @Test
  void aShotAgainstAnotherReferenceIsFound() throws Exception {
    long round = begin();
    for (int i = 1; i <= 3; i++) {
      shot(round, i, "299 ft/s", i == 2 ? Speed.parse("299 ft/s") : BOW);
    }
    assertTrue(words(Kind.VERIFICATION).contains("shot 2 is held against 299 ft/s"));
  }

  @Test
  void theLinesOfAFloodAreCounted() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    ledger.say(refused("torn", "It has no end."));
    ledger.say(
        refused(
            "flood",
            "3421 further lines of 27368 bytes in all came within a second and were refused"));
    ledger.close("the gate went mad");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(
        report.says("Lines of the instrument that were refused (3,422 in 2 entries)"),
        report.text());
    assertTrue(report.says("3,422 lines refused"), report.text());
  }

  private Fact refused(String reason, String words) {
    return new Fact.LineRefused(
        ledger.standing().current().map(Check::number).orElse(null),
        "",
        reason,
        words,
        "serial port",
        "gate timer",
        Instant.EPOCH);
  }

  @Test
  void aCheckBeforeTheVerificationThatWasDueIsFound() throws Exception {
    plan(true, null, false);
    marta();
    assertEquals(List.of(Kind.VERIFICATION_DUE), kinds());
    assertTrue(words(Kind.VERIFICATION_DUE).endsWith("a verification was due (opening)."));
  }

  @Test
  void oneCompetitorTooManyIsFound() throws Exception {
    plan(false, 1, false);
    marta();
    assertEquals(List.of(), kinds());
    edwin();
    assertTrue(words(Kind.VERIFICATION_DUE).endsWith("a verification was due (interval)."));
  }

  @Test
  void closingWithoutTheVerificationIsFoundAndTheReasonTold() throws Exception {
    plan(false, null, true);
    marta();
    ledger.say(new Fact.StationClosed("thunderstorm"));
    assertEquals(List.of(Kind.VERIFICATION_SKIPPED), kinds());
    assertTrue(words(Kind.VERIFICATION_SKIPPED).endsWith("was due: “thunderstorm”."));
    ledger.say(new Fact.StationClosed(null));
    assertTrue(words(Kind.VERIFICATION_DUE).endsWith("no reason was signed."));
  }

  @Test
  void aBrokenOffVerificationIsToldAndHoldsNothing() throws Exception {
    long round = shots("310 ft/s");
    ledger.say(new Fact.VerificationEnded(round, false, "broken off after 1", "the string broke"));
    assertEquals(List.of(Kind.VERIFICATION_OUT), kinds());
    assertTrue(words(Kind.VERIFICATION_OUT).endsWith("broken off after 1, “the string broke”."));
  }

  @Test
  void aBiasThatWasSeenBeforeItWasBrokenOffIsNamedWithTheChecksSince() throws Exception {
    long marta = marta();
    long round = shots("299.0 ft/s", "299.2 ft/s");
    ledger.say(new Fact.VerificationEnded(round, false, "broken off after 2", "it was late"));
    hold(round, marta);
    assertEquals(List.of(Kind.IN_QUESTION, Kind.VERIFICATION_OUT), kinds());
    String words = words(Kind.VERIFICATION_OUT);
    assertTrue(
        words.endsWith(
            "broken off after 2, “it was late”. The shots taken were out of its limits already: 2"
                + " shots: bias +2.700 ft/s (more than 1 ft/s), spread 0.141 ft/s (at most 1 ft/s),"
                + " farthest shot 2 by 2.800 ft/s, of 3 shots agreed. Decided since the last good"
                + " verification: checks "
                + marta
                + "."),
        words);
    assertTrue(PrintedReport.of(ledger.file()).says("out of its limits, broken off: it was late"));
  }

  private long typed(long round, int number) throws Exception {
    return ledger.say(
        new Fact.VerificationShot(
            round,
            number,
            Speed.parse("296.5 ft/s"),
            ScriptedLedger.bytes("296.5 ft/s"),
            "typed",
            "gate timer",
            ledger.instant(),
            BOW,
            null));
  }

  private void link(String state) throws Exception {
    ledger.say(new Fact.LinkChanged(state, "The port.", Instant.EPOCH));
  }

  private long passTyped() throws Exception {
    long round = begin();
    for (int shot = 1; shot <= 3; shot++) {
      typed(round, shot);
    }
    ledger.say(new Fact.VerificationEnded(round, true, "as computed", null));
    return round;
  }

  @Test
  void aPassOnTypedShotsAloneBesideAConnectedInstrumentIsFound() throws Exception {
    link("up");
    long round = passTyped();
    assertTrue(
        words(Kind.VERIFICATION_TYPED)
            .startsWith("Verification " + round + " passed on typed values alone"),
        words(Kind.VERIFICATION_TYPED));
    List<String> typed =
        findings().stream().filter(f -> f.kind() == Kind.TYPED).map(Finding::words).toList();
    assertEquals(3, typed.size());
    assertEquals("Verification " + round + ", shot 2: 296.5 ft/s.", typed.get(1));
  }

  @Test
  void typedShotsWhileTheInstrumentIsNotHeardAreOnlyTold() throws Exception {
    passTyped();
    link("up");
    link("closed");
    passTyped();
    assertEquals(List.of(Kind.TYPED), kinds().stream().distinct().toList());
  }

  @Test
  void aTypedShotAmongMeasuredOnesIsOnlyTold() throws Exception {
    link("up");
    long round = shots("296.0 ft/s", "296.5 ft/s");
    typed(round, 3);
    ledger.say(new Fact.VerificationEnded(round, true, "as computed", null));
    assertEquals(List.of(Kind.TYPED), kinds());
  }

  @Test
  void aVerificationInTheMiddleOfACheckIsFound() throws Exception {
    ledger.call("401", "Edwin Thackerby", "LB");
    begin();
    ledger.read("57.9 m/s");
    ledger.verdict();
    ledger.close(null);
    assertTrue(words(Kind.ORDER).contains("was at the line"));
  }

  @Test
  void anotherPlanIsTold() throws Exception {
    plan(true, 20, true);
    verify(true, GOOD);
    assertEquals(List.of(), kinds());
    plan(false, null, false);
    assertEquals(
        "From here on verifications are due never; before it was at the opening, after 20"
            + " competitors, at the end.",
        words(Kind.EXCHANGED));
  }
}
