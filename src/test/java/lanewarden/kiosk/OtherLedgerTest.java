package lanewarden.kiosk;

import static lanewarden.kiosk.RecordsScreenTest.answer;
import static lanewarden.kiosk.RecordsScreenTest.choose;
import static lanewarden.kiosk.RecordsScreenTest.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import lanewarden.journal.ProtestFact;
import lanewarden.kiosk.desk.Printing;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports, exports, slips and dockets of this ledger and of another, by keys alone. */
class OtherLedgerTest {
  @TempDir Path temp;
  private final List<String> printed = new ArrayList<>();
  private List<String> printers = List.of("Office", "Tent");
  private Booth booth;
  private EventFolder other;

  @BeforeEach
  void open() throws Exception {
    Makers real = BoothEvent.MAKERS;
    Printing printing =
        new Printing() {
          @Override
          public List<String> printers() {
            return printers;
          }

          @Override
          public String print(Path pdf, Optional<String> printer) {
            printed.add(printer.orElse("usual") + " " + pdf.getFileName());
            return printer.orElse("usual");
          }
        };
    booth =
        new Booth(
            BoothEvent.PLAIN,
            temp,
            1280,
            800,
            new Makers(real.report(), real.slips(), printing, real.checkUp()));
    other = BoothEvent.station(temp.resolve("other"), "Station 2");
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private static String head(EventFolder folder) throws Exception {
    return LedgerInspection.of(folder.path(), List.of()).head().orElseThrow();
  }

  private void records(KeyCode errand) throws Exception {
    booth.press(KeyCode.F8);
    booth.press(errand);
  }

  private void typeInto(String field, String text) throws Exception {
    booth.focusField(field);
    booth.type(text);
  }

  private Path inEvent(String name) {
    return booth.folder.path().resolve(name).toAbsolutePath();
  }

  private static int signatures(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getSignatureDictionaries().size();
    }
  }

  @Test
  void reportAndExportOfAnotherLedgerAreNamedAfterItsHead() throws Exception {
    records(KeyCode.F8);
    booth.type("1");
    typeInto("form-ledger", other.path().toString());
    booth.press(KeyCode.ENTER);
    Path pdf = inEvent("audit-" + head(other) + ".pdf");
    assertTrue(told(booth).contains("File: " + pdf), told(booth) + booth.text("form-trouble"));
    assertTrue(Files.exists(pdf));

    booth.press(KeyCode.F4);
    booth.type("1");
    typeInto("form-ledger", other.ledger().toString());
    booth.press(KeyCode.ENTER);
    Path export = inEvent("export-" + head(other));
    assertTrue(told(booth).contains("Folder: " + export), told(booth));
    assertEquals(
        LedgerInspection.of(other.path(), List.of()).entries(),
        Files.readAllLines(export.resolve("entries.jsonl")).size());
  }

  @Test
  void ledgerThatIsNotThereIsRefusedInTheForm() throws Exception {
    records(KeyCode.F8);
    booth.type("1");
    typeInto("form-ledger", temp.resolve("nowhere").toString());
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("form-trouble").contains("FILE-MISSING"), booth.text("form-trouble"));
    assertEquals(temp.resolve("nowhere").toString(), booth.fieldText("form-ledger"));
  }

  @Test
  void reportIsPrintedOnThePrinterThatIsNamed() throws Exception {
    records(KeyCode.F8);
    choose(booth, "1", "1", "1");
    answer(booth, "3");
    String name = "audit-" + booth.station.view().head().shortForm() + ".pdf";
    assertEquals(List.of("Tent " + name), printed);
    assertTrue(told(booth).contains("Printed on Tent"), told(booth));
  }

  @Test
  void whereThereIsNoPrinterTheFormSaysSo() throws Exception {
    printers = List.of();
    records(KeyCode.F8);
    assertTrue(booth.text("form-print").contains("the system has no printer"));
    answer(booth, "1");
    assertTrue(booth.text("errand-words").startsWith("Made: "), booth.text("form-trouble"));
    assertEquals(List.of(), printed);
  }

  @Test
  void keyOfTheSealThatLiesElsewhereIsAskedForAndHasToBeNamed() throws Exception {
    Path stick = Files.move(booth.folder.reportSeal(), temp.resolve("seal"));
    records(KeyCode.F8);
    choose(booth, "1");
    answer(booth, "2");
    assertTrue(booth.shows("seal-panel"), booth.text("form-trouble"));
    answer(booth, "", BoothEvent.ORGANIZER_PASSPHRASE);
    assertTrue(booth.shows("seal-panel"), "it has to be named");

    typeInto("form-seal-key", temp.resolve("nowhere").toString());
    booth.press(KeyCode.ENTER);
    typeInto("form-organizer", BoothEvent.ORGANIZER_PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("form-trouble").contains("KEY-MISSING"), booth.text("form-trouble"));
    typeInto("form-seal-key", stick.toString());
    typeInto("form-organizer", BoothEvent.ORGANIZER_PASSPHRASE);
    booth.press(KeyCode.ENTER);
    Path pdf = inEvent("audit-" + booth.station.view().head().shortForm() + "-sealed.pdf");
    assertEquals(1, signatures(pdf), booth.text("form-trouble"));
  }

  @Test
  void addressThatIsNoneIsRefusedBeforeTheReportIsMade() throws Exception {
    records(KeyCode.F8);
    choose(booth, "1");
    answer(booth, "2");
    typeInto("form-authority", "time.example.org");
    typeInto("form-organizer", BoothEvent.ORGANIZER_PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("form-trouble").contains("TIME-STAMP-ADDRESS"));
    assertEquals("time.example.org", booth.fieldText("form-authority"));
    // Port 9 is the discard service (RFC 863), where nobody listens here
    typeInto("form-authority", "http://127.0.0.1:9/");
    typeInto("form-organizer", BoothEvent.ORGANIZER_PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("errand-trouble").contains("TIME-STAMP-MISSING"));
  }

  @Test
  void slipIsWrittenOfTheLastCheckOfABibAndOfACheckByItsNumber() throws Exception {
    booth.signIn();
    booth.scan("103");
    booth.shoot("299.1 ft/s", "299.0 ft/s", "299.2 ft/s");
    long check = booth.check().number();
    records(KeyCode.F12);
    answer(booth, "103");
    String head = booth.station.view().head().shortForm();
    assertEquals(
        "Made: slip-103-" + head + ".pdf", booth.text("errand-words"), booth.text("form-trouble"));
    assertTrue(told(booth).contains("Check " + check + ": within"), told(booth));

    booth.press(KeyCode.F12);
    booth.focusField("form-which");
    booth.type(String.valueOf(check));
    booth.press(KeyCode.TAB);
    booth.type("2");
    booth.focusField("form-place");
    answer(booth, temp.resolve("slip.pdf").toString());
    assertEquals(List.of("Office slip.pdf"), printed, booth.text("errand-words"));

    booth.press(KeyCode.F12);
    answer(booth, "999");
    assertEquals("Not done", booth.text("errand-words"));
    assertTrue(booth.text("errand-trouble").contains("SLIP"), booth.text("errand-trouble"));
  }

  @Test
  void docketTellsEveryProtestAndCorrectionAsTheLedgerHasThem() throws Exception {
    records(KeyCode.F1);
    booth.press(KeyCode.ENTER);
    assertEquals("There is no protest and no correction", booth.text("errand-words"));
    booth.press(KeyCode.ESCAPE);
    booth.signIn();
    booth.scan("103");
    booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
    long check = booth.check().number();
    booth
        .station
        .protests()
        .file(check, ProtestFact.Cause.PROTEST, "the team captain", "the string was wet");
    booth.station.protests().correctBib(check, "102", "the bibs were exchanged");
    booth.settle();
    records(KeyCode.F1);
    booth.press(KeyCode.ENTER);

    assertEquals("Protests: 1. Corrections: 1", booth.text("errand-words"));
    String told = told(booth);
    assertTrue(told.contains("Check " + check + ", by the team captain: the string was wet"), told);
    assertTrue(told.contains("WAITS for a recheck or a ruling"), told);
    assertTrue(told.contains("Reason: the bibs were exchanged"), told);
  }

  @Test
  void docketOfALedgerThatIsNotSoundIsToldAndProvesNothing() throws Exception {
    RecordsProofTest.spoil(
        other.ledger(),
        "DROP TRIGGER entry_is_never_changed;UPDATE entry SET jws = replace(jws, 'a', 'b')"
            + " WHERE seq = 3");
    records(KeyCode.F1);
    booth.focusField("form-ledger");
    answer(booth, other.path().toString());
    assertTrue(booth.text("errand-words").contains("NOT sound"), booth.text("errand-words"));
    assertTrue(told(booth).contains("nothing of this is proved"), told(booth));
  }
}
