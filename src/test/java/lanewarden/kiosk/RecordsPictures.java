package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javafx.scene.input.KeyCode;
import lanewarden.journal.ProtestFact;

/** Draws the records: what can be done, what is asked, and how it ends. */
final class RecordsPictures {
  private final Sketchbook book;

  RecordsPictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    String size = "-" + width + "x" + height;
    try (Booth booth = new Booth(temp, width, height, Booth.REPORTS)) {
      booth.press(KeyCode.F8);
      book.take(booth, "records" + size);
      booth.press(KeyCode.ESCAPE);
      booth.signIn();
      booth.scan("102");
      booth.shoot("300.1 ft/s", "301.4 ft/s");
      booth.press(KeyCode.F3);
      booth.type("2");
      booth.press(KeyCode.ENTER);
      booth.shoot("300.6 ft/s", "299.9 ft/s");
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      booth.type("1");
      book.take(booth, "records-report" + size);
      booth.press(KeyCode.TAB);
      RecordsScreenTest.answer(booth, "2");
      RecordsScreenTest.answer(booth, "four grey geese");
      book.take(booth, "records-seal-wrong" + size);
      RecordsScreenTest.answer(booth, BoothEvent.ORGANIZER_PASSPHRASE);
      book.take(booth, "records-reported" + size);
      booth.press(KeyCode.F3);
      book.take(booth, "records-verify" + size);
      RecordsScreenTest.answer(booth, "7-0123456789ab");
      book.take(booth, "records-unsound" + size);
      booth.press(KeyCode.END);
      book.take(booth, "records-witness" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F12);
      booth.type("102");
      book.take(booth, "records-write" + size);
      booth.press(KeyCode.ENTER);
      book.take(booth, "records-written" + size);
      booth.press(KeyCode.HOME);
      booth.type("102");
      book.take(booth, "records-check" + size);
      booth.press(KeyCode.ENTER);
      book.take(booth, "records-checked" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.DELETE);
      booth.press(KeyCode.ENTER);
      book.take(booth, "records-chart" + size);
      booth.press(KeyCode.ESCAPE);
      sealElsewhere(booth, temp.resolve("seal.key"), size);
      docket(booth, size);
      BoothEvent.adoptShare(booth);
      booth.press(KeyCode.F11);
      booth.press(KeyCode.ENTER);
      booth.type("12345 12345 12345 12345 6");
      book.take(booth, "records-draw" + size);
      booth.press(KeyCode.ENTER);
      book.take(booth, "records-drawn" + size);
      Files.copy(
          Path.of("config/station.toml"),
          booth.folder.path().resolve("station.toml"),
          StandardCopyOption.REPLACE_EXISTING);
      booth.press(KeyCode.F9);
      booth.press(KeyCode.ENTER);
      book.take(booth, "records-accuracy" + size);
    }
  }

  /** The key of the seal is kept elsewhere, and the authority's address is none. */
  private void sealElsewhere(Booth booth, Path stick, String size) throws Exception {
    Files.move(booth.folder.reportSeal(), stick);
    booth.press(KeyCode.F8);
    RecordsScreenTest.choose(booth, "1");
    RecordsScreenTest.answer(booth, "2", stick.toString());
    booth.focusField("form-authority");
    RecordsScreenTest.answer(booth, "time.example.org", BoothEvent.ORGANIZER_PASSPHRASE);
    book.take(booth, "records-seal-elsewhere" + size);
    booth.press(KeyCode.ESCAPE);
    Files.move(stick, booth.folder.reportSeal());
  }

  private void docket(Booth booth, String size) throws Exception {
    long check = booth.check().number();
    booth
        .station
        .protests()
        .file(
            check,
            ProtestFact.Cause.PROTEST,
            "Team captain of the Hollow Oak archers",
            "the string was wet when it was measured");
    booth.station.protests().correctBib(check, "103", "the bibs were exchanged");
    booth.settle();
    booth.press(KeyCode.F1);
    booth.press(KeyCode.ENTER);
    book.take(booth, "records-docket" + size);
  }
}
