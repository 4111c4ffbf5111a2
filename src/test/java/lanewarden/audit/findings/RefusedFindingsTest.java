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
    assertFound(
        refuse(over("00311"), reason, ledger.instant().plus(Duration.ofSeconds(30))), words);
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
  void aFloodIsCountedOnlyAfterElevenLinesOfItsSecond() throws Exception {
    Instant at = ledger.instant();
    for (int i = 0; i < 11; i++) {
      refuse("junk\r\n", "not the sentence", at.plusMillis(i));
    }
    refuse("junk\r\n", "flood", at.plusMillis(500));
    assertNothing();
    assertFound(refuse("junk\r\n", "flood", at.plusMillis(1500)), "only counted, as of a flood");
  }
}
