package lanewarden.audit.findings;

import static lanewarden.audit.findings.GateTimerPapers.LINE;
import static lanewarden.audit.findings.GateTimerPapers.NEXT;
import static lanewarden.audit.findings.GateTimerPapers.SECOND;
import static lanewarden.audit.findings.GateTimerPapers.SETTINGS;
import static lanewarden.audit.findings.GateTimerPapers.base64;
import static lanewarden.audit.findings.GateTimerPapers.profile;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.SecondReading;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The line opened with other papers than before: who, what, and what that did. */
class PapersFindingsTest {
  @TempDir Path folder;
  private ScriptedLedger ledger;
  private SigningKey other;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.bare(folder.resolve("event.ledger"));
    ledger.adopt(ScriptedLedger.RULES);
    ledger.say(ScriptedLedger.roster(ScriptedLedger.ROSTER));
    other = ledger.enrol("Ferrand Askew", Role.OFFICIAL);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private static Fact.StationOpened papers(String profile, String second, String settings) {
    return new Fact.StationOpened(
        second == null ? "Gate timer on /dev/ttyUSB0" : "Gate timer and Plain decimal",
        profile,
        "Lanewarden 0.9.0",
        second,
        settings,
        null,
        null);
  }

  private long take(String speed, String line, String number) throws Exception {
    return take(speed, line, number, null);
  }

  private long take(String speed, String line, String number, SecondReading second)
      throws Exception {
    return ledger.say(
        new Fact.ReadingTaken(
            ledger.now().number(),
            ledger.now().shots().size() + 1,
            Speed.parse(speed),
            base64(line),
            "serial port",
            second == null ? "Gate timer on /dev/ttyUSB0" : "Gate timer",
            ledger.instant(),
            number,
            null,
            second));
  }

  private long refuse(String line, String reason) throws Exception {
    return ledger.say(
        new Fact.LineRefused(
            ledger.standing().current().map(Check::number).orElse(null),
            base64(line),
            reason,
            "Shoot again.",
            "serial port",
            "Gate timer on /dev/ttyUSB0",
            ledger.instant()));
  }

  private String found() throws Exception {
    return Audited.of(ledger.file()).only(Kind.PAPERS);
  }

  private void assertSays(String words) throws Exception {
    assertTrue(found().contains(words), found());
  }

  @Test
  void theSamePapersOpenedAgainAreNothingToTell() throws Exception {
    ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    ledger.sayAs(other, papers(profile("gate-timer"), null, SETTINGS));
    assertEquals(List.of(), Audited.of(ledger.file()).words(Kind.PAPERS));
  }

  @Test
  void aNarrowerProfileIsToldWithBothOpeningsItsSignerAndTheFastArrowsThatItRefused()
      throws Exception {
    long before = ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    String narrow = profile("gate-timer").replace("\"500 ft/s\"", "\"296 ft/s\"");
    long after = ledger.sayAs(other, papers(narrow, null, SETTINGS));
    ledger.call("101", "Marta Olesund", "OC");
    long refused = refuse(LINE, "out of range");
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(), audited.words(Kind.REFUSED));
    assertEquals(List.of(before, after, refused), audited.entries(Kind.PAPERS));
    assertEquals(
        "“Ferrand Askew” opened the line with other papers in entry "
            + after
            + " than “Ottoline Vantreese” in entry "
            + before
            + ". Sentence profile, sentence.most: was \"500 ft/s\", is \"296 ft/s\". By the papers"
            + " of entry "
            + before
            + ", 1 refused line is a reading: entry "
            + refused
            + ": 300.1 ft/s.",
        audited.only(Kind.PAPERS));
  }

  @Test
  void aProfileThatReadsAnotherSpeedIsToldWithBothSpeeds() throws Exception {
    ledger.say(papers(profile("plain-decimal"), null, SETTINGS));
    ledger.say(papers(profile("plain-decimal").replace("\"ft/s\"", "\"m/s\""), null, SETTINGS));
    ledger.call("101", "Marta Olesund", "OC");
    long taken = take("091.4 m/s", "091.4\r\n", null);
    assertSays("Sentence profile, sentence.unit: was \"ft/s\", is \"m/s\"");
    assertSays(
        "1 reading is something else: entry " + taken + ": signed as 91.4 m/s, by them 91.4 ft/s");
  }

  @Test
  void agreementThatWasLoosenedIsToldWithTheReadingThatItLetThrough() throws Exception {
    String plain = profile("plain-decimal");
    ledger.say(papers(profile("gate-timer"), plain, SETTINGS + SECOND));
    ledger.say(papers(profile("gate-timer"), plain, SETTINGS + SECOND.replace("1 ft/s", "9 ft/s")));
    ledger.call("101", "Marta Olesund", "OC");
    long taken =
        take(
            "300.1 ft/s",
            LINE,
            "00042",
            new SecondReading(Speed.parse("305.0 ft/s"), base64("305.0\r\n"), "Plain decimal"));
    assertSays("Settings, second.agree: was \"1 ft/s\", is \"9 ft/s\"");
    assertSays("entry " + taken + ": signed as 300.1 ft/s, by them no reading");
  }

  @Test
  void changedBackIsToldTwiceAndTheReadingsUnderTheFirstPapersAreNotHeldAgainstThem()
      throws Exception {
    ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    ledger.say(
        papers(profile("gate-timer").replace("\"500 ft/s\"", "\"296 ft/s\""), null, SETTINGS));
    ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", LINE, "00042");
    List<String> words = Audited.of(ledger.file()).words(Kind.PAPERS);
    assertEquals(2, words.size());
    assertFalse(words.get(0).contains("By the papers"), words.get(0));
    // what the narrow papers would have refused stands against the third opening
    assertTrue(words.get(1).contains("by them no reading (out of range)"), words.get(1));
  }

  @Test
  void whatIsRefusedByBothPapersIsNoDifference() throws Exception {
    ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    ledger.say(papers(profile("gate-timer"), null, SETTINGS.replace("USB0", "USB7")));
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", LINE, "00042");
    refuse(LINE, "repeated");
    refuse("$PLWT,00043,0300.1,F\r\n", "not the sentence");
    assertSays("Settings, port: was \"/dev/ttyUSB0\", is \"/dev/ttyUSB7\".");
    assertFalse(found().contains("By the papers"), found());
  }

  @Test
  void instrumentAndProgramAreToldTooAndACommentIsCalledOne() throws Exception {
    ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    ledger.say(
        new Fact.StationOpened(
            "typed in",
            "# ours\n" + profile("gate-timer"),
            "Lanewarden 0.9.1",
            null,
            null,
            null,
            null));
    assertSays(
        "Instrument: was “Gate timer on /dev/ttyUSB0”, is “typed in”; Sentence profile: only its"
            + " comments or its layout are others; Settings: is not there any more; Program: was"
            + " “Lanewarden 0.9.0”, is “Lanewarden 0.9.1”.");
  }

  @Test
  void papersThatCannotBeReadEndNothing() throws Exception {
    ledger.say(papers(profile("gate-timer"), null, SETTINGS));
    ledger.say(papers("name = \"\\uD800\"", null, SETTINGS));
    ledger.call("101", "Marta Olesund", "OC");
    take("300.1 ft/s", NEXT, "00043");
    assertSays("Sentence profile: is another, and one of the two cannot be read as TOML.");
  }
}
