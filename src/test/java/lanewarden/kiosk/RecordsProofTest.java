package lanewarden.kiosk;

import static lanewarden.kiosk.RecordsScreenTest.answer;
import static lanewarden.kiosk.RecordsScreenTest.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import javafx.scene.input.KeyCode;
import lanewarden.audit.slip.Slips;
import lanewarden.journal.CheckSought;
import lanewarden.metrology.PublicDraw;
import lanewarden.quantity.Percent;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ledgers proved, witnessed and brought in, and slips found, by keys alone. */
class RecordsProofTest {
  @TempDir Path temp;
  private Booth booth;

  @BeforeEach
  void open() throws Exception {
    booth = new Booth(temp);
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private void records(KeyCode errand) throws Exception {
    booth.press(KeyCode.F8);
    booth.press(errand);
  }

  private String head() {
    return booth.station.view().head().shortForm();
  }

  private void checked(String bib) throws Exception {
    booth.signIn();
    booth.scan(bib);
    booth.shoot("299.1 ft/s", "299.0 ft/s", "299.2 ft/s");
  }

  /** A copy of the ledger as it is, made by SQLite itself while the station has it open. */
  private Path copy(String name) throws Exception {
    Path copy = temp.resolve(name);
    try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + booth.folder.ledger());
        Statement statement = base.createStatement()) {
      statement.execute("VACUUM INTO '" + copy + "'");
    }
    return copy;
  }

  static void spoil(Path ledger, String sql) throws Exception {
    try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + ledger);
        Statement statement = base.createStatement()) {
      for (String one : sql.split(";", -1)) {
        statement.execute(one);
      }
    }
  }

  @Test
  void soundLedgerSaysThatNothingWasFoundAndWhatWasCompared() throws Exception {
    String printed = head();
    checked("103");
    records(KeyCode.F3);
    answer(booth, printed + " " + head());

    assertTrue(booth.text("errand-words").startsWith("The ledger is sound"));
    assertTrue(told(booth).contains("Faults: none found"), told(booth));
    assertTrue(told(booth).contains("Heads compared with this ledger: 2"), told(booth));
  }

  @Test
  void withoutAHeadTheOfficialIsToldWhatWouldNotShow() throws Exception {
    records(KeyCode.F3);
    booth.press(KeyCode.ENTER);

    assertTrue(told(booth).contains("No head from elsewhere was compared"), told(booth));
  }

  @Test
  void changedCopyIsFoundWithTheNumberOfItsEntry() throws Exception {
    checked("103");
    Path copy = copy("copy.sqlite");
    spoil(
        copy,
        "DROP TRIGGER entry_is_never_changed;UPDATE entry SET jws = replace(jws, 'a', 'b')"
            + " WHERE seq = 3");
    records(KeyCode.F3);
    booth.focusField("form-ledger");
    answer(booth, copy.toString());

    assertTrue(booth.text("errand-words").contains("NOT sound"), booth.text("errand-words"));
    List<LedgerInspection.Fault> faults = LedgerInspection.of(copy, List.of()).faults();
    assertTrue(faults.stream().anyMatch(fault -> fault.entry() == 3), faults.toString());
    for (LedgerInspection.Fault fault : faults) {
      assertTrue(told(booth).contains(fault.words()), told(booth));
    }
  }

  @Test
  void headThatIsNoneIsRefusedBeforeAnythingIsVerified() throws Exception {
    records(KeyCode.F3);
    answer(booth, "12-xyz");

    assertTrue(booth.text("form-trouble").contains("HEAD-FORM"));
    assertEquals("12-xyz", booth.fieldText("form-heads"), "what was typed stays");
    assertTrue(booth.shows("verify-panel"));
  }

  @Test
  void exportIsBroughtInAgainEntryForEntry() throws Exception {
    checked("103");
    String printed = head();
    records(KeyCode.F4);
    answer(booth, "1");
    Path folder = booth.folder.path().resolve("export-" + printed).toAbsolutePath();
    assertEquals("Exported: " + folder.getFileName(), booth.text("errand-words"));

    booth.press(KeyCode.F5);
    answer(booth, folder.resolve("entries.jsonl").toString());
    booth.type(temp.resolve("again.sqlite").toString());
    booth.focusField("form-heads");
    answer(booth, printed);
    assertTrue(booth.text("errand-words").startsWith("The ledger is sound"), told(booth));
    assertTrue(told(booth).contains("Ledger made: " + temp.resolve("again.sqlite")), told(booth));
    LedgerInspection again = LedgerInspection.of(temp.resolve("again.sqlite"), List.of(printed));
    assertTrue(again.sound(), again.faults().toString());
    assertEquals(printed, again.head().orElseThrow());
  }

  @Test
  void exportThatWasChangedIsNotBroughtInAndItsFaultIsNamed() throws Exception {
    checked("103");
    records(KeyCode.F4);
    booth.type("1");
    booth.focusField("form-place");
    answer(booth, temp.resolve("out").toString());
    Path entries = temp.resolve("out").resolve("entries.jsonl");
    List<String> lines = Files.readAllLines(entries);
    Files.write(entries, lines.subList(0, lines.size() - 2));
    Files.write(entries, lines.subList(lines.size() - 1, lines.size()), StandardOpenOption.APPEND);

    booth.press(KeyCode.F5);
    answer(booth, entries.toString());
    booth.type(temp.resolve("again.sqlite").toString());
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("errand-words").contains("NOT sound"), booth.text("errand-words"));
    assertTrue(told(booth).contains("No ledger was made"), told(booth));
    assertTrue(told(booth).contains(String.valueOf(lines.size())), told(booth));
    assertFalse(Files.exists(temp.resolve("again.sqlite")));
  }

  @Test
  void headOfAnotherStationIsSignedByTheOfficialOnDutyAndFoundAgain() throws Exception {
    EventFolder other = BoothEvent.station(temp.resolve("two"), "Station 2");
    String seen = LedgerInspection.of(other.path(), List.of()).head().orElseThrow();
    booth.press(KeyCode.F8);
    assertTrue(
        Booth.call(() -> booth.front.official().lookup("#errand-end").isDisabled()),
        "nobody is on duty to sign");
    assertTrue(booth.text("errand-end").contains("needs an official on duty"));
    booth.press(KeyCode.ESCAPE);
    booth.signIn();
    records(KeyCode.END);
    answer(booth, "Station 2", seen);
    assertEquals("Signed: head " + seen + " of “Station 2”", booth.text("errand-words"));
    long entry = booth.station.view().head().sequence();
    assertTrue(told(booth).contains("entry " + entry), told(booth));

    booth.press(KeyCode.F3);
    booth.focusField("form-ledger");
    booth.type(other.path().toString());
    booth.focusField("form-witnesses");
    answer(booth, booth.folder.path().toString());
    assertTrue(booth.text("errand-words").startsWith("The ledger is sound"), told(booth));
    assertTrue(told(booth).contains("Heads compared with this ledger: 1"), told(booth));
  }

  @Test
  void aFileIsChosenInsteadOfTypedUnlessTheScreenIsNotToBeLeft() throws Exception {
    booth.signIn();
    Path other = BoothEvent.station(temp.resolve("other"), "Station 2").ledger();
    booth.windows.chosen.add(other);
    records(KeyCode.F3);
    booth.touch("choose-ledger");
    assertEquals(other.toString(), booth.fieldText("form-ledger"));
    booth.touch("choose-ledger");
    assertEquals(other.toString(), booth.fieldText("form-ledger"), "nothing was chosen");
    booth.press(KeyCode.ENTER);
    assertTrue(told(booth).contains("Station: Station 2"), told(booth));

    booth.windows.turnFull();
    booth.press(KeyCode.F3);
    assertFalse(booth.shows("choose-ledger"));
  }

  @Test
  void ownStationCannotBearWitnessToItself() throws Exception {
    booth.signIn();
    String before = head();
    records(KeyCode.END);
    answer(booth, "Station 1", "7-0123456789ab");

    assertTrue(booth.text("form-trouble").contains("WITNESS-SELF"));
    assertEquals(before, head());
  }

  @Test
  void slipThatIsScannedAnywhereOnTheScreenIsLookedUp() throws Exception {
    checked("103");
    long check = booth.check().number();
    String code =
        new Slips(Clock.systemUTC(), SignedPapers::of)
            .write(booth.folder.ledger(), CheckSought.NUMBERED + check, temp.resolve("slip.pdf"))
            .text();
    booth.press(KeyCode.F8);
    booth.scan(code);
    assertEquals("The slip stands, as printed", booth.text("errand-words"));
    assertTrue(told(booth).contains("Check " + check + " of bib 103"), told(booth));

    booth.scan(code.replace("Station+1", "Station+9"));
    assertEquals(
        "The slip and this ledger do not fit together", booth.text("errand-words"), told(booth));
    booth.press(KeyCode.F2);
    answer(booth, "103");
    assertTrue(booth.text("form-trouble").contains("SLIP-CODE"), booth.text("form-trouble"));
  }

  /**
   * What is drawn is what the published recipe draws, which has a script of its own to check it.
   */
  @Test
  void shareThatTheRuleBookWantsIsDrawnOnceFromTheDigitsThrown() throws Exception {
    booth.press(KeyCode.F8);
    booth.press(KeyCode.F11);
    assertFalse(booth.shows("draw-panel"), "nobody on duty");
    booth.press(KeyCode.ESCAPE);
    booth.signIn();
    records(KeyCode.F11);
    assertTrue(booth.text("errand-words").startsWith("Nobody is to be drawn"), told(booth));
    BoothEvent.adoptShare(booth);
    booth.press(KeyCode.F11);
    booth.press(KeyCode.ENTER);
    answer(booth, "12345");
    assertTrue(booth.text("form-trouble").contains("DRAW-SEED"), booth.text("form-trouble"));
    booth.type(" 12345 12345 12345 6");
    booth.press(KeyCode.ENTER);

    List<String> pool =
        Roster.read("roster.csv", Files.readAllBytes(booth.folder.path().resolve("roster.csv")))
            .competitors()
            .stream()
            .filter(competitor -> competitor.division().equals("OC"))
            .map(Competitor::bib)
            .toList();
    List<String> drawn =
        PublicDraw.of("12345 12345 12345 12345 6", Percent.parse("50 %"), pool).drawn();
    assertEquals("Drawn in OC: " + drawn.size() + " of " + pool.size(), booth.text("errand-words"));
    assertTrue(told(booth).contains(": " + String.join(", ", drawn)), told(booth));
    booth.press(KeyCode.F11);
    assertTrue(booth.text("errand-words").startsWith("Nobody is to be drawn"), told(booth));
  }

  @Test
  void lostSealIsMadeAnewAtTheOpenStationAndSealsTheNextReport() throws Exception {
    booth.signIn();
    booth.press(KeyCode.F8);
    assertTrue(Booth.call(() -> booth.front.official().lookup("#errand-f10").isDisabled()));
    booth.press(KeyCode.ESCAPE);
    Files.delete(booth.folder.reportSeal());
    records(KeyCode.F10);
    answer(booth, "a very long elm");
    assertTrue(booth.text("form-trouble").contains("KEY-PASSPHRASE"));
    assertFalse(Files.exists(booth.folder.reportSeal()));
    long before = booth.station.view().head().sequence();
    answer(booth, BoothEvent.ORGANIZER_PASSPHRASE);
    assertTrue(told(booth).contains("Certificate of the seal"), booth.text("form-trouble"));
    assertEquals(before + 1, booth.station.view().head().sequence());
    assertEquals(booth.station.view().official().orElseThrow(), Booth.OFFICIAL);

    booth.press(KeyCode.F8);
    RecordsScreenTest.choose(booth, "1");
    answer(booth, "2", BoothEvent.ORGANIZER_PASSPHRASE);
    assertTrue(booth.text("errand-words").startsWith("Made"), booth.text("form-trouble"));
  }

  @Test
  void accuracyOfAReadingIsWorkedOutOrItIsSaidWhatIsMissing() throws Exception {
    records(KeyCode.F9);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("form-trouble").contains("NO-ACCURACY"));
    booth.press(KeyCode.ESCAPE);

    Files.copy(
        Path.of("config/station.toml"),
        booth.folder.path().resolve("station.toml"),
        StandardCopyOption.REPLACE_EXISTING);
    booth.press(KeyCode.F9);
    booth.focusField("form-speed");
    answer(booth, "300");
    assertTrue(booth.text("form-trouble").contains("SPEED"), booth.text("form-trouble"));
    booth.focusField("form-speed");
    answer(booth, "300 ft/s");
    assertTrue(
        booth.text("errand-words").startsWith("combined: standard uncertainty"),
        booth.text("form-trouble"));
    assertTrue(told(booth).contains("degrees of freedom"), told(booth));
  }
}
