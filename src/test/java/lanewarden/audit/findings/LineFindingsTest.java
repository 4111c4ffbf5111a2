package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the audit finds of an instrument's own numbers, and of the times of readings. */
class LineFindingsTest {
  @TempDir Path folder;
  private ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    ledger.say(
        new Fact.StationOpened(
            "gate timer",
            Files.readString(Path.of("config/profiles/gate-timer.toml")),
            "Lanewarden 0.6.0"));
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  /** A line of our gate timer, 300.1 ft/s: its checksum is the exclusive or of what it covers. */
  private static String line(int number) {
    String covered = "PLWT,%05d,0300.1,F,006664,A".formatted(number);
    int sum = 0;
    for (byte b : covered.getBytes(StandardCharsets.US_ASCII)) {
      sum ^= b;
    }
    return "$%s*%02X\r\n".formatted(covered, sum);
  }

  private long take(int number, String source, Instant at) throws Exception {
    return ledger.say(
        new Fact.ReadingTaken(
            ledger.now().number(),
            ledger.now().shots().size() + 1,
            Speed.parse("300.1 ft/s"),
            Base64.getEncoder().encodeToString(line(number).getBytes(StandardCharsets.US_ASCII)),
            source,
            "gate timer",
            at,
            "%05d".formatted(number)));
  }

  private long take(int number) throws Exception {
    return take(number, "serial port", ledger.instant());
  }

  private void first(String source) throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    check(source, 1, 2, 3);
  }

  private void second(String source, int... numbers) throws Exception {
    ledger.call("102", "Jun Takemizu", "OC");
    check(source, numbers);
  }

  private void check(String source, int... numbers) throws Exception {
    for (int number : numbers) {
      take(number, source, ledger.instant());
    }
    ledger.verdict();
    ledger.close(ledger.now().outcome().isPresent() ? null : "rain");
  }

  private void refuse(int number) throws Exception {
    ledger.say(
        new Fact.LineRefused(
            ledger.standing().current().map(Check::number).orElse(null),
            Base64.getEncoder()
                .encodeToString(
                    line(number).replace(",A*", ",W*").getBytes(StandardCharsets.US_ASCII)),
            "wrong checksum",
            "It was damaged on the way.",
            "serial port",
            "gate timer",
            ledger.instant()));
  }

  private Audited audited() throws Exception {
    return Audited.of(ledger.file());
  }

  @Test
  void aLineThatStandsTwiceInOneCheckIsFound() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    long first = take(42);
    take(43);
    long again = take(42);
    ledger.verdict();
    ledger.close(null);
    assertEquals(List.of(Kind.REPEATED), audited().contradictions());
    assertEquals(List.of(first, again), audited().entries(Kind.REPEATED));
    assertTrue(audited().only(Kind.REPEATED).contains("number 00042"));
  }

  @Test
  void readingsOfAnEarlierCheckThatWereCopiedAreFound() throws Exception {
    first("serial port");
    second("serial port", 1, 2, 3);
    assertEquals(List.of(Kind.REPEATED), audited().contradictions());
    assertTrue(
        audited().only(Kind.REPEATED).startsWith("3 readings one after the other have"),
        audited().only(Kind.REPEATED));
  }

  @Test
  void aReadingWithBytesAndTimeOfAnEarlierOneIsFoundAlsoInAnotherOpening() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    Instant at = ledger.instant();
    long first = take(1, "simulator", at);
    ledger.close("rain");
    ledger.reopen();
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    ledger.call("101", "Marta Olesund", "OC");
    long copied = take(1, "simulator", at);
    ledger.close("rain");
    assertEquals(List.of(Kind.REPEATED, Kind.READING_TIME), audited().contradictions());
    assertEquals(List.of(first, copied), audited().entries(Kind.REPEATED));
  }

  @Test
  void oneLineThatComesAgainAfterTheNumbersBeganAnewIsOnlyToldWithThat() throws Exception {
    first("serial port");
    second("serial port", 1, 20);
    assertEquals(List.of(), audited().contradictions());
    assertTrue(audited().only(Kind.REPEATED_ONCE).startsWith("1 reading has the very bytes"));
    assertTrue(audited().words(Kind.NUMBERS).get(0).contains("began to count anew"));
  }

  @Test
  void aSimulatedInstrumentThatCountsAnewAtEveryOpeningContradictsNothing() throws Exception {
    first("simulator");
    ledger.reopen();
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    second("simulator", 1, 2, 3);
    assertEquals(List.of(), audited().contradictions());
    assertEquals(List.of(), audited().words(Kind.REPEATED_ONCE));
    assertEquals(List.of(), audited().words(Kind.NUMBERS));
  }

  @Test
  void shotsThatTheInstrumentCountedAndNoEntryTellsOfAreCounted() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    long before = take(7);
    refuse(9);
    long after = take(12);
    ledger.close("rain");
    assertEquals(List.of(), audited().contradictions());
    assertEquals(List.of(before, after), audited().entries(Kind.NUMBERS));
    assertTrue(
        audited().only(Kind.NUMBERS).contains("the instrument counted 3 shots between them"),
        audited().only(Kind.NUMBERS));
  }

  @Test
  void numbersThatRefusedLinesHadAreNotMissing() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    take(7);
    refuse(8);
    take(9);
    ledger.close("rain");
    assertEquals(List.of(), audited().words(Kind.NUMBERS));
  }

  private void reopened() throws Exception {
    ledger.reopen();
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
  }

  @Test
  void shotsCountedWhileTheProgramDidNotRunAreToldAndContradictNothing() throws Exception {
    first("serial port");
    reopened();
    refuse(5);
    second("serial port", 7, 8, 9);
    assertEquals(List.of(), audited().contradictions());
    String words = audited().only(Kind.NUMBERS);
    assertTrue(words.contains("the instrument counted 2 shots between them"), words);
    assertTrue(words.contains("while the station did not run"), words);
  }

  @Test
  void anInstrumentThatCountsOnOrAnewAfterTheProgramRanAnewGivesNoGap() throws Exception {
    first("serial port");
    reopened();
    second("serial port", 4, 5, 6);
    reopened();
    ledger.call("103", "Ingeborg Hollin", "OC");
    check("serial port", 2, 3, 4);
    assertEquals(List.of(), audited().words(Kind.NUMBERS));
  }

  @Test
  void aSimulatedInstrumentThatCountsFartherAtItsNextOpeningGivesNoGap() throws Exception {
    first("simulator");
    reopened();
    second("simulator", 7, 8, 9);
    assertEquals(List.of(), audited().words(Kind.NUMBERS));
  }

  private long verification(Speed reference) throws Exception {
    return ledger.say(
        new Fact.VerificationBegan("on request", "check bow", 3, "1 ft/s", "1 ft/s", reference));
  }

  private long shot(long verification, int shot, Instant at, Speed reference) throws Exception {
    return ledger.say(
        new Fact.VerificationShot(
            verification,
            shot,
            Speed.parse("300.1 ft/s"),
            Base64.getEncoder().encodeToString(line(shot).getBytes(StandardCharsets.US_ASCII)),
            "serial port",
            "gate timer",
            at,
            reference,
            null));
  }

  @Test
  void aShotOfAVerificationFromBeforeTheOneBeforeItOrAfterItsEntryIsFound() throws Exception {
    Speed bow = Speed.parse("300 ft/s");
    long round = verification(bow);
    Instant early = ledger.instant();
    shot(round, 1, ledger.instant(), bow);
    Instant later = ledger.instant();
    ledger.instant();
    long before = shot(round, 2, early.minusSeconds(1), bow);
    long after = shot(round, 3, later.plusSeconds(60), bow);
    assertEquals(List.of(before, after), audited().entries(Kind.READING_TIME));
    assertTrue(
        audited().words(Kind.READING_TIME).get(0).contains("before the shot before it was signed"));
    assertTrue(
        audited()
            .words(Kind.READING_TIME)
            .get(1)
            .startsWith("Verification " + round + ", shot 3 was measured after the entry"));
  }

  @Test
  void aShotOfAVerificationFromBeforeItBeganIsFound() throws Exception {
    Instant early = ledger.instant();
    ledger.instant();
    long round = verification(Speed.parse("300 ft/s"));
    long shot = shot(round, 1, early, Speed.parse("300 ft/s"));
    assertEquals(List.of(shot), audited().entries(Kind.READING_TIME));
    assertTrue(audited().only(Kind.READING_TIME).contains("before the verification began"));
  }

  @Test
  void aShotThatWasMadeBeforeTheReferenceOfTheLastWasTypedIsFound() throws Exception {
    long round = verification(null);
    shot(round, 1, ledger.instant(), null);
    Instant early = ledger.instant();
    ledger.instant();
    ledger.say(new Fact.ReferenceTyped(round, 1, Speed.parse("300 ft/s")));
    long shot = shot(round, 2, early, null);
    assertEquals(List.of(shot), audited().entries(Kind.READING_TIME));
    assertTrue(audited().only(Kind.READING_TIME).contains("before the reference value"));
  }

  @Test
  void shotsOfAVerificationInTheirOrderContradictNothing() throws Exception {
    long round = verification(null);
    for (int shot = 1; shot <= 3; shot++) {
      shot(round, shot, ledger.instant(), null);
      ledger.say(new Fact.ReferenceTyped(round, shot, Speed.parse("300 ft/s")));
    }
    assertEquals(List.of(), audited().words(Kind.READING_TIME));
  }

  @Test
  void aReadingFromBeforeItsCheckIsFound() throws Exception {
    Instant early = ledger.instant();
    ledger.setClock(early.plusSeconds(60));
    ledger.say(new FrameFact.ClockStepped(new BigDecimal("58"), early.plusSeconds(2)));
    ledger.call("101", "Marta Olesund", "OC");
    long reading = take(1, "serial port", early);
    ledger.close("rain");
    assertEquals(List.of(Kind.READING_TIME), audited().contradictions());
    assertEquals(List.of(reading), audited().entries(Kind.READING_TIME));
    assertTrue(audited().only(Kind.READING_TIME).contains("before the check was opened"));
  }

  @Test
  void aReadingFromAfterItsEntryIsFound() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    take(1, "serial port", ledger.instant().plusSeconds(60));
    ledger.close("rain");
    assertEquals(List.of(Kind.READING_TIME), audited().contradictions());
    assertTrue(audited().only(Kind.READING_TIME).contains("after the entry that took it"));
  }

  @Test
  void aReadingThatWaitedWhileTheClockWasSetBackContradictsNothing() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    Instant at = ledger.instant();
    ledger.setClock(at.minusSeconds(3600));
    ledger.say(new FrameFact.ClockStepped(new BigDecimal("-3600"), at));
    take(1, "serial port", at);
    ledger.close("rain");
    assertEquals(List.of(), audited().contradictions());
  }
}
