package lanewarden.audit.findings;

import static lanewarden.audit.findings.GateTimerPapers.LINE;
import static lanewarden.audit.findings.GateTimerPapers.NEXT;
import static lanewarden.audit.findings.GateTimerPapers.base64;
import static lanewarden.audit.findings.GateTimerPapers.profile;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.SecondReading;
import lanewarden.quantity.Speed;
import lanewarden.station.Budget;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings whose signed speed is not what the instrument sent, by the papers of their time. */
class BytesFindingsTest {
  private static final String SETTINGS =
      GateTimerPapers.SETTINGS
          + """
          [accuracy]
          stated = "0.5 %"
          stated_covers = "k = 2"
          """
          + GateTimerPapers.SECOND;

  @TempDir Path folder;
  private ScriptedLedger ledger;
  private long opening;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private void openedWith(String profile, String second, String settings) throws Exception {
    opening =
        ledger.say(
            new Fact.StationOpened(
                second == null ? "gate timer" : "gate timer and plain",
                profile,
                "Lanewarden 0.5.0",
                second,
                settings,
                settings == null ? null : budget(settings),
                null));
  }

  /** What the settings say of the accuracy, as the station signs it with them. */
  private List<String> budget(String settings) throws Exception {
    Path file = Files.writeString(folder.resolve("station.toml"), settings);
    return Budget.of(file, Speed.parse("300 ft/s")).inWords();
  }

  private long take(
      String speed, String raw, String number, String uncertainty, SecondReading second)
      throws Exception {
    return ledger.say(
        new Fact.ReadingTaken(
            ledger.now().number(),
            ledger.now().shots().size() + 1,
            Speed.parse(speed),
            raw,
            "serial port",
            "gate timer",
            ledger.instant(),
            number,
            uncertainty == null ? null : Speed.parse(uncertainty),
            second));
  }

  private static SecondReading second(String speed, String raw) {
    return new SecondReading(Speed.parse(speed), base64(raw), "plain");
  }

  private void assertOne(long entry, String words) throws Exception {
    Audited audited = Audited.of(ledger.file());
    assertEquals(
        List.of(Kind.BYTES), audited.contradictions(), () -> audited.words(Kind.BYTES) + "");
    assertEquals(List.of(entry), audited.entries(Kind.BYTES));
    assertTrue(audited.only(Kind.BYTES).contains(words), audited.only(Kind.BYTES));
  }

  @Test
  void aSpeedThatItsBytesDoNotSayIsAContradictionThoughTheVerdictFollows() throws Exception {
    openedWith(profile("gate-timer"), null, null);
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", base64(LINE), "00042", null, null);
    long wrong = take("290.1 ft/s", base64(NEXT), "00043", null, null);
    ledger.close("rain");
    assertOne(wrong, "shot 2 was signed as 290.1 ft/s, but its bytes say 300.1 ft/s.");
    PrintedReport report = PrintedReport.of(ledger.file());
    assertTrue(report.says("Readings that do not follow from what the instrument sent"));
    assertTrue(report.says("but its bytes say 300.1 ft/s"));
  }

  @Test
  void theSameSpeedInAnotherUnitIsNotWhatTheBytesSay() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    // 300 ft/s is 91.44 m/s exactly
    long other = take("91.44 m/s", ScriptedLedger.bytes("300 ft/s"), null, null, null);
    ledger.close("rain");
    assertOne(other, "but its bytes say 300 ft/s");
  }

  @Test
  void bytesThatAreNoReadingAreNamedWithTheReason() throws Exception {
    openedWith(profile("gate-timer"), null, null);
    ledger.call("101", "Marta Olesund", "OC");
    long damaged = take("300.1 ft/s", base64(LINE.replace("*1C", "*1D")), "00042", null, null);
    ledger.close("rain");
    assertOne(damaged, "its bytes are no reading (wrong checksum)");
  }

  @Test
  void moreOrLessThanOneWholeLineIsNoReading() throws Exception {
    openedWith(profile("gate-timer"), null, null);
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", base64(LINE + LINE), "00042", null, null);
    take("300.1 ft/s", base64(LINE.strip()), "00042", null, null);
    take("300.1 ft/s", "§", "00042", null, null);
    ledger.close("rain");
    List<String> words = Audited.of(ledger.file()).words(Kind.BYTES);
    assertEquals(3, words.size());
    assertTrue(words.get(0).contains("no reading (torn)"), words.get(0));
    assertTrue(words.get(1).contains("no reading (torn)"), words.get(1));
    assertTrue(words.get(2).contains("are not base64"), words.get(2));
  }

  @Test
  void anotherNumberOfTheLineIsFound() throws Exception {
    openedWith(profile("gate-timer"), null, null);
    ledger.call("101", "Marta Olesund", "OC");
    long renumbered = take("300.1 ft/s", base64(LINE), "00043", null, null);
    ledger.close("rain");
    assertOne(renumbered, "its bytes carry the number 00042, signed is the number 00043");
  }

  @Test
  void theSecondInstrumentIsReadAnewWithItsOwnProfile() throws Exception {
    openedWith(profile("gate-timer"), profile("plain-decimal"), null);
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", base64(LINE), "00042", null, second("300.0 ft/s", "300.0\r\n"));
    long other = take("300.1 ft/s", base64(NEXT), "00043", null, second("300.0 ft/s", "280.0\r\n"));
    ledger.close("rain");
    assertOne(other, "but the bytes of the second instrument say 280.0 ft/s");
  }

  @Test
  void aSecondInstrumentThatIsMissingOrOneTooManyIsFound() throws Exception {
    openedWith(profile("gate-timer"), profile("plain-decimal"), null);
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", base64(LINE), "00042", null, null);
    openedWith(profile("gate-timer"), null, null);
    take("300.1 ft/s", base64(LINE), "00042", null, second("300.0 ft/s", "300.0\r\n"));
    ledger.close("rain");
    List<String> words = Audited.of(ledger.file()).words(Kind.BYTES);
    assertTrue(words.get(0).contains("what the second measured is not there"), words.get(0));
    assertTrue(words.get(1).contains("but the line had only one"), words.get(1));
  }

  @Test
  void whatTheSettingsOfTheOpeningDoNotGiveIsFound() throws Exception {
    openedWith(profile("gate-timer"), profile("plain-decimal"), SETTINGS);
    ledger.call("101", "Marta Olesund", "OC");
    // Half of 0.5 % of 300.1 ft/s is 0.75025 ft/s, written to the half of an even last place
    take("300.1 ft/s", base64(LINE), "00042", "0.7502 ft/s", second("300.0 ft/s", "300.0\r\n"));
    long surer =
        take("300.1 ft/s", base64(NEXT), "00043", "0.1 ft/s", second("302.0 ft/s", "302.0\r\n"));
    ledger.close("rain");
    assertOne(surer, "the settings give it an uncertainty of 0.7502 ft/s, signed is 0.1 ft/s");
    assertOne(
        surer,
        "its two instruments do not agree: 300.1 ft/s and 302.0 ft/s are 1.90 ft/s apart, more"
            + " than the 1 ft/s");
  }

  @Test
  void aTypedReadingIsReadAnewFromWhatWasTyped() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    long typed =
        ledger.say(
            new Fact.ReadingTaken(
                ledger.now().number(),
                1,
                Speed.parse("298.0 ft/s"),
                base64("308"),
                "typed",
                "keyboard",
                ledger.instant(),
                null));
    ledger.close("rain");
    assertOne(typed, "was signed as 298.0 ft/s, but its bytes say 308 ft/s");
  }

  @Test
  void aShotOfAVerificationIsReadAnewToo() throws Exception {
    openedWith(profile("gate-timer"), profile("plain-decimal"), null);
    long round =
        ledger.say(new Fact.VerificationBegan("on request", "second", 2, "1 ft/s", "1 ft/s", null));
    shot(round, 1, "300.1 ft/s", second("300.0 ft/s", "300.0\r\n"), "300.0 ft/s");
    long wrong = shot(round, 2, "300.0 ft/s", second("300.0 ft/s", "300.4\r\n"), "300.0 ft/s");
    ledger.say(new Fact.VerificationEnded(round, true, "as computed", null));
    assertOne(
        wrong,
        "Verification "
            + round
            + ", shot 2 was signed as 300.0 ft/s, but its bytes say 300.1 ft/s; the bytes of the"
            + " second instrument say 300.4 ft/s.");
  }

  @Test
  void aReferenceThatTheSecondInstrumentDidNotMeasureIsFound() throws Exception {
    openedWith(profile("gate-timer"), profile("plain-decimal"), null);
    long round =
        ledger.say(new Fact.VerificationBegan("on request", "second", 2, "1 ft/s", "1 ft/s", null));
    shot(round, 1, "300.1 ft/s", second("298.0 ft/s", "298.0\r\n"), "300.0 ft/s");
    assertTrue(
        Audited.of(ledger.file())
            .only(Kind.VERIFICATION)
            .contains("held against 300.0 ft/s, but the second instrument measured 298.0 ft/s"));
  }

  private long shot(long round, int number, String speed, SecondReading second, String reference)
      throws Exception {
    return ledger.say(
        new Fact.VerificationShot(
            round,
            number,
            Speed.parse(speed),
            base64(LINE),
            "serial port",
            "gate timer",
            ledger.instant(),
            Speed.parse(reference),
            second));
  }

  @Test
  void papersThatCannotBeReadLeaveEveryReadingAfterThemUnproven() throws Exception {
    openedWith("no profile at all", null, null);
    ledger.call("101", "Marta Olesund", "OC");
    long first = take("300.1 ft/s", base64(LINE), "00042", null, null);
    long next = take("300.1 ft/s", base64(NEXT), "00043", null, null);
    ledger.close("rain");
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(Kind.BYTES), audited.contradictions());
    assertEquals(List.of(opening, first, next), audited.entries(Kind.BYTES));
    assertTrue(
        audited.only(Kind.BYTES).contains("nothing shows that 2 readings after it follow"),
        audited.only(Kind.BYTES));
  }

  @Test
  void aReadingBeforeTheLineWasOpenedIsFound() throws Exception {
    try (ScriptedLedger bare = ScriptedLedger.bare(folder.resolve("bare.ledger"))) {
      bare.adopt(ScriptedLedger.RULES);
      bare.call("101", "Marta Olesund", "OC");
      long reading = bare.read("300 ft/s");
      bare.close("rain");
      Audited audited = Audited.of(bare.file());
      assertEquals(List.of(reading), audited.entries(Kind.BYTES));
      assertTrue(
          audited.only(Kind.BYTES).startsWith("1 reading stood before any opening of the line"));
    }
  }
}
