package lanewarden.kiosk;

import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import lanewarden.audit.slip.Slips;
import lanewarden.kiosk.desk.Printing;

/** Draws what judges and captains see: the docket, its panels, and the slip. */
final class ProtestPictures {
  private final Sketchbook book;

  ProtestPictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Makers makers =
        new Makers(
            Booth.REPORTS,
            (ledger, check, pdf) -> {
              Files.writeString(pdf, "made");
              return new Slips.Written(0, "made", "made");
            },
            withoutPaper(),
            BoothEvent.CHECK_UP);
    try (Booth booth =
        new Booth(BoothEvent.PLAIN, Files.createTempDirectory("pictures"), width, height, makers)) {
      String size = "-" + width + "x" + height;
      booth.press(KeyCode.F1);
      book.take(booth, "protest-none" + size);
      booth.press(KeyCode.ESCAPE);
      booth.signIn();
      booth.scan("103");
      booth.shoot("312.4 ft/s", "310.0 ft/s");
      booth.emit("$PLWT,00003,0304.1,F,006578,A*00\\r\\n");
      booth.press(KeyCode.F3);
      booth.type("2");
      booth.press(KeyCode.ENTER);
      booth.shoot("310.4 ft/s", "311.2 ft/s");
      booth.press(KeyCode.ENTER);
      booth.press(KeyCode.F1);
      book.take(booth, "protest-check" + size);
      booth.press(KeyCode.F2);
      book.take(booth, "protest-file" + size);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.type("Team captain of the Hollow Oak archers");
      booth.press(KeyCode.ENTER);
      booth.type("3");
      booth.press(KeyCode.ENTER);
      book.take(booth, "protest-filed" + size);
      booth.press(KeyCode.F3);
      book.take(booth, "protest-line" + size);
      booth.shoot("299.1 ft/s");
      booth.press(KeyCode.F1);
      booth.shoot("299.4 ft/s");
      book.take(booth, "protest-meanwhile" + size);
      booth.shoot("299.0 ft/s");
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.ENTER);
      booth.press(KeyCode.F1);
      booth.type("103");
      booth.press(KeyCode.DOWN);
      book.take(booth, "protest-beside" + size);
      booth.press(KeyCode.F4);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.type("2");
      booth.press(KeyCode.ENTER);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.type("four grey geese");
      booth.press(KeyCode.ENTER);
      book.take(booth, "protest-rule-wrong" + size);
      booth.type(Booth.PASSPHRASE);
      booth.press(KeyCode.ENTER);
      book.take(booth, "protest-ruled" + size);
      correct(booth);
      book.take(booth, "protest-correct" + size);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      book.take(booth, "protest-correct-refused" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.ESCAPE);
      booth.scan("102");
      booth.shoot("299.1 ft/s", "299.4 ft/s", "299.0 ft/s");
      booth.press(KeyCode.F1);
      correct(booth);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      book.take(booth, "protest-corrected" + size);
      booth.press(KeyCode.F8);
      book.take(booth, "protest-confirm" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F9);
      book.take(booth, "protest-slip" + size);
      booth.press(KeyCode.F9);
      book.take(booth, "protest-slip-failed" + size);
    }
  }

  /** Asks for another bib, up to the reason. */
  private static void correct(Booth booth) throws Exception {
    booth.press(KeyCode.F5);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    booth.type("103");
    booth.press(KeyCode.ENTER);
  }

  private static Printing withoutPaper() {
    return new Printing() {
      @Override
      public List<String> printers() {
        return List.of("Table printer", "Office");
      }

      @Override
      public String print(Path pdf, Optional<String> printer) throws Exception {
        throw new FileSystemException("Table printer", null, "out of paper");
      }
    };
  }
}
