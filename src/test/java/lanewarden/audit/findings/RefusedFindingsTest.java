package lanewarden.audit.findings;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.ProtestFact;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines that somebody signed as refused although their bytes are a reading, or for another reason
 * than they give.
 */
class RefusedFindingsTest {
  @TempDir Path folder;
  private ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    ledger.say(
        new Fact.StationOpened(
            "gate timer",
            Files.readString(Path.of("config/profiles/gate-timer.toml")),
            "Lanewarden 0.9.0"));
    ledger.call("101", "Marta Olesund", "OC");
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  /** A line of our gate timer; its checksum is the exclusive or of what it covers. */
  private static String line(String number, String rest) {
    String covered = "PLWT," + number + "," + rest;
    int sum = 0;
    for (byte b : covered.getBytes(US_ASCII)) {
      sum ^= b;
    }
    return "$%s*%02X\r\n".formatted(covered, sum);
  }

  /** 330 ft/s through gates 2 ft apart: 2 / 330 s is 6060.6 microseconds. */
  private static String over(String number) {
    return line(number, "0330.0,F,006061,A");
  }

  private static String base64(String line) {
    return Base64.getEncoder().encodeToString(line.getBytes(US_ASCII));
  }

  private long refuse(String line, String reason, Instant at) throws Exception {
    Long check = ledger.standing().current().map(Check::number).orElse(null);
    return ledger.say(
        new Fact.LineRefused(
            check, base64(line), reason, "Shoot again.", "serial port", "gate timer", at));
  }

  private long refuse(String line, String reason) throws Exception {
    return refuse(line, reason, ledger.instant());
  }

  private void take(String number) throws Exception {
    ledger.say(
        new Fact.ReadingTaken(
            ledger.now().number(),
            ledger.now().shots().size() + 1,
            Speed.parse("330.0 ft/s"),
            base64(over(number)),
            "serial port",
            "gate timer",
            ledger.instant(),
            number));
  }

  private void pass(Duration time) {
    Instant until = ledger.instant().plus(time);
    while (ledger.instant().isBefore(until)) {
      // The clock goes on whenever it is asked
    }
  }

  private long refuseOffDuty(String line, Instant at) throws Exception {
    return ledger.say(
        new Fact.LineRefused(
            null,
            base64(line),
            "nobody on duty",
            "No official was on duty when it arrived.",
            "serial port",
            "gate timer",
            at));
  }

  private void assertTime(long entry, String words) throws Exception {
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(entry), audited.entries(Kind.READING_TIME));
    assertTrue(audited.only(Kind.READING_TIME).contains(words), audited.only(Kind.READING_TIME));
  }

  private void assertFound(long entry, String words) throws Exception {
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(Kind.REFUSED), audited.contradictions());
    assertEquals(List.of(entry), audited.entries(Kind.REFUSED));
    assertTrue(audited.only(Kind.REFUSED).contains(words), audited.only(Kind.REFUSED));
  }

  private void assertNothing() throws Exception {
    assertEquals(List.of(), Audited.of(ledger.file()).contradictions());
  }

  @ParameterizedTest
  @CsvSource({
    "torn",
    "overlong",
    "wrong checksum",
    "not the sentence",
    "not a number",
    "out of range",
    "bad status",
    "unknown unit",
    "gate times disagree",
    "gates reversed"
  })
  void aGoodLineThatWasRefusedAsNoneIsAContradictionThatSaysItsSpeed(String reason)
      throws Exception {
    take("00310");
    assertFound(refuse(over("00311"), reason), "a whole line of the instrument and say 330.0 ft/s");
  }

  @Test
  void aBadLineRefusedForAnotherReasonThanItHasIsFound() throws Exception {
    long entry = refuse(line("00311", "0330.0,F,006061,W"), "not the sentence");
    assertFound(entry, "its bytes are to be refused as “bad status”");
  }

  @Test
  void aLineThatCameTwiceIsRefusedRightlyAndOneThatCameOnceIsNot() throws Exception {
    take("00310");
    refuse(over("00310"), "repeated");
    assertNothing();
    assertFound(
        refuse(over("00311"), "repeated"),
        "its bytes say 330.0 ft/s, and no line of the instrument just before it had the number 00311");
  }

  @Test
  void aReasonThatNoStationGivesIsFound() throws Exception {
    assertFound(refuse(over("00311"), "too fast to be true"), "is no reason for which");
  }

  @ParameterizedTest
  @CsvSource({
    "no shot of it, no verification was going on",
    "held, the line was not held",
    "no competitor, was at the line",
    "already decided, no check at the line was decided",
    "not asked for, waited for something else",
    "nobody on duty, somebody was on duty at its time",
    "instruments disagree, the line had only one instrument",
    "heard by one instrument only, the line had only one instrument"
  })
  void aReadingThatSomebodyHadAUseForIsNotRefusedAsOneOfNoUse(String reason, String words)
      throws Exception {
    pass(Duration.ofSeconds(30));
    assertFound(refuse(over("00311"), reason), words);
  }

  @Test
  void aReadingThatNobodyHadAUseForIsRefusedRightly() throws Exception {
    ledger.close("rain");
    refuse(over("00311"), "no competitor");
    ledger.say(new Fact.LineHeld(null, "the light went", List.of()));
    refuse(over("00312"), "held");
    assertNothing();
  }

  @Test
  void whileTheLineIsNotClearThatIsTheOnlyReasonOfAReading() throws Exception {
    ledger.say(new FrameFact.LineStopped("somebody is forward"));
    refuse(over("00312"), "line not clear");
    assertNothing();
    ledger.close("rain");
    assertFound(refuse(over("00313"), "no competitor"), "the line was not clear");
  }

  @Test
  void aReadingIsNotRefusedForAStopThatDidNotStand() throws Exception {
    ledger.say(
        new FrameFact.LineCleared(ledger.say(new FrameFact.LineStopped("somebody is forward"))));
    assertFound(refuse(over("00311"), "line not clear"), "the line was not stopped");
  }

  @Test
  void aFloodIsCountedOnlyAfterElevenLinesOfItsSecond() throws Exception {
    Instant at = ledger.instant();
    for (int i = 0; i < 11; i++) {
      refuse("junk\r\n", "not the sentence", at.plusMillis(i));
    }
    refuse("junk\r\n", "flood", at.plusMillis(500));
    assertNothing();
    assertFound(refuse("junk\r\n", "flood", at.plusMillis(1500)), "only counted, as of a flood");
  }

  /** Its profile knows a repeated line by the time between two, not by a number. */
  @Test
  void aLineSaidToHaveComeBeforeTheReadingBeforeItIsNoRepeatOfIt() throws Exception {
    ledger.say(new Fact.StationClosed("another line"));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    ledger.say(new Fact.StationOpened("gate timer", ScriptedLedger.PROFILE, "Lanewarden 0.9.0"));
    ledger.call("102", "Jun Takemizu", "OC");
    Instant before = ledger.instant();
    pass(Duration.ofSeconds(30));
    ledger.read("290 ft/s");
    long entry =
        ledger.say(
            new Fact.LineRefused(
                ledger.now().number(),
                ScriptedLedger.bytes("330.0 ft/s"),
                "repeated",
                "The line came twice.",
                "serial port",
                "gate timer",
                before));
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(entry), audited.entries(Kind.REFUSED));
    assertTrue(audited.only(Kind.REFUSED).contains("its bytes say 330.0 ft/s"));
    assertTime(entry, "before what the instrument sent before it");
  }

  @Test
  void aLineIsNoYoungerThanItsEntry() throws Exception {
    Instant later = ledger.instant().plus(Duration.ofMinutes(1));
    assertTime(refuse("junk\r\n", "not the sentence", later), "after its entry was signed");
  }

  @Test
  void aLineOfNoCompetitorIsNoOlderThanTheEndOfTheCheckBeforeIt() throws Exception {
    Instant within = ledger.instant();
    take("00310");
    ledger.close("rain");
    long entry = refuse(over("00311"), "no competitor", within);
    assertTime(entry, "before entry " + (entry - 1) + " was signed");
  }

  @Test
  void nobodyWasOnDutyOnlyBeforeTheSignInThatWroteIt() throws Exception {
    long beforeTheProgram =
        refuseOffDuty(over("00311"), ScriptedLedger.START.minus(Duration.ofHours(1)));
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(beforeTheProgram), audited.entries(Kind.REFUSED));
    assertTrue(audited.only(Kind.REFUSED).contains("right after the sign-in"));
    assertEquals(List.of(beforeTheProgram), audited.entries(Kind.READING_TIME));
  }

  @Test
  void whatCameWhileNobodyWasOnDutyIsWrittenAtTheNextSignInAndIsNoContradiction() throws Exception {
    ledger.say(new FrameFact.OfficialSignedOut(ScriptedLedger.OFFICIAL));
    pass(Duration.ofSeconds(10));
    Instant waits = ledger.instant();
    pass(Duration.ofSeconds(10));
    // Somebody comes to correct a check and goes, and what waits goes on waiting
    SigningKey visitor = ledger.enrol("Quill Abernant", Role.OFFICIAL);
    ledger.sayAs(visitor, new Fact.OfficialSignedIn("Quill Abernant"));
    ledger.sayAs(
        visitor,
        ProtestFact.CorrectionMade.ofDivision(ledger.now().number(), "LB", "entered late"));
    ledger.sayAs(visitor, new FrameFact.OfficialSignedOut("Quill Abernant"));
    pass(Duration.ofSeconds(10));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    refuseOffDuty(over("00311"), waits);
    refuseOffDuty(over("00312"), waits.plusSeconds(1));
    assertNothing();
    long tooOld = refuseOffDuty(over("00313"), waits.minus(Duration.ofMinutes(5)));
    assertTime(tooOld, "before the official left");
  }

  @Test
  void whatCameBeforeTheFirstSignInOfAProgramIsNoOlderThanTheProgram() throws Exception {
    ledger.close("rain");
    pass(Duration.ofSeconds(10));
    Instant before = ledger.instant();
    pass(Duration.ofSeconds(10));
    ledger.reopen();
    pass(Duration.ofSeconds(20));
    Instant waits = ledger.instant();
    pass(Duration.ofSeconds(10));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    refuseOffDuty(over("00311"), waits);
    assertNothing();
    assertTime(refuseOffDuty(over("00312"), before), "before the program began");
  }

  /** The bytes of this instrument do not prove that a line is whole. */
  @ParameterizedTest
  @CsvSource({
    "a link that was there is up again",
    "a link is up that was heard already",
    "the line is opened again"
  })
  void nothingButALinkOrAProgramThatBeginsTearsAWholeLine(String pretext) throws Exception {
    ledger.close("another line");
    ledger.say(new Fact.StationOpened("gate timer", ScriptedLedger.PROFILE, "Lanewarden 0.9.0"));
    if (pretext.endsWith("again")) {
      ledger.say(new Fact.LinkChanged("up", "It is connected.", ledger.instant()));
    }
    ledger.call("102", "Jun Takemizu", "OC");
    ledger.read("290 ft/s");
    if (pretext.startsWith("a link")) {
      ledger.say(new Fact.LinkChanged("up", "It is connected.", ledger.instant()));
    } else {
      ledger.say(new Fact.StationOpened("gate timer", ScriptedLedger.PROFILE, "Lanewarden 1.0.0"));
    }
    long entry = torn();
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(entry), audited.entries(Kind.REFUSED));
    assertTrue(audited.only(Kind.REFUSED).contains("say 330.0 ft/s"));
  }

  private long torn() throws Exception {
    return ledger.say(
        new Fact.LineRefused(
            ledger.now().number(),
            ScriptedLedger.bytes("330.0 ft/s"),
            "torn",
            "A line was joined midway.",
            "serial port",
            "gate timer",
            ledger.instant()));
  }

  @Test
  void aLineAfterALostLinkMayBeTornAndTheReaderIsToldWhatItsBytesSay() throws Exception {
    ledger.close("another line");
    ledger.say(new Fact.StationOpened("gate timer", ScriptedLedger.PROFILE, "Lanewarden 0.9.0"));
    ledger.call("102", "Jun Takemizu", "OC");
    ledger.read("290 ft/s");
    ledger.say(new Fact.LinkChanged("lost", "The port went away.", ledger.instant()));
    ledger.say(new Fact.LinkChanged("up", "It is connected.", ledger.instant()));
    torn();
    assertNothing();
    assertTrue(
        Audited.of(ledger.file())
            .only(Kind.LINE_REFUSED)
            .contains("Its bytes say 330.0 ft/s. Bytes:"));
  }

  @Test
  void anOpeningInTheMiddleOfACheckNeedsAProgramThatBeganAnew() throws Exception {
    String profile = ScriptedLedger.PROFILE;
    ledger.reopen();
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    ledger.say(new Fact.StationOpened("gate timer", profile, "Lanewarden 0.9.1"));
    assertNothing();
    long again = ledger.say(new Fact.StationOpened("gate timer", profile, "Lanewarden 0.9.2"));
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(Kind.ORDER), audited.contradictions());
    assertTrue(audited.entries(Kind.ORDER).contains(again));
    assertTrue(audited.only(Kind.ORDER).contains("the program had not begun anew"));
  }

  @Test
  void aRepeatAfterLinesThatWereOnlyCountedIsToldWithItsSpeed() throws Exception {
    take("00310");
    Instant at = ledger.instant();
    for (int i = 0; i < 11; i++) {
      refuse("junk\r\n", "not the sentence", at.plusMillis(i));
    }
    refuse("junk\r\n", "flood", at.plusMillis(500));
    refuse(over("00399"), "repeated");
    assertNothing();
    List<String> told = Audited.of(ledger.file()).words(Kind.LINE_REFUSED);
    assertTrue(
        told.get(told.size() - 1)
            .contains(
                "Its bytes say 330.0 ft/s. Lines just before it were only counted, so nothing"
                    + " shows whether it was refused rightly."));
  }
}
