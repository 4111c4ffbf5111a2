package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import lanewarden.audit.printing.PostScriptPaper;
import lanewarden.kiosk.desk.Printing;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports and slips printed from the screens, and a printer without paper. */
class PaperTest {
  @TempDir Path temp;

  private Booth booth(Printing printing) throws Exception {
    Makers real = BoothEvent.MAKERS;
    Makers makers = new Makers(real.report(), real.slips(), printing, real.checkUp());
    Booth booth = new Booth(BoothEvent.PLAIN, temp, 1280, 800, makers);
    booth.signIn();
    booth.scan("103");
    booth.shoot("299.1 ft/s", "299.0 ft/s", "299.2 ft/s");
    return booth;
  }

  private static Printing on(PostScriptPaper paper) {
    return new Printing() {
      @Override
      public List<String> printers() {
        return paper.printers().names();
      }

      @Override
      public String print(Path pdf, Optional<String> printer) throws Exception {
        return paper.printers().print(pdf, printer);
      }
    };
  }

  private static void report(Booth booth) throws Exception {
    booth.press(KeyCode.F8);
    booth.press(KeyCode.F8);
    RecordsScreenTest.choose(booth, "1", "1", "1");
    RecordsScreenTest.answer(booth, "2");
  }

  private Path only(String start) throws Exception {
    try (Stream<Path> all = Files.list(temp.resolve("event"))) {
      return all.filter(file -> file.getFileName().toString().startsWith(start))
          .reduce(
              (one, other) -> {
                throw new AssertionError(one + " and " + other);
              })
          .orElseThrow();
    }
  }

  private static long pages(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }

  @Test
  void aReportIsPrintedWholeOnTheUsualPrinter() throws Exception {
    PostScriptPaper paper = new PostScriptPaper();
    try (Booth booth = booth(on(paper))) {
      report(booth);
      assertEquals(pages(only("audit-")), paper.pages());
      assertTrue(
          RecordsScreenTest.told(booth).contains("Printed on "), RecordsScreenTest.told(booth));
    }
  }

  @Test
  void aReportThatThePrinterDoesNotTakeIsThereAllTheSame() throws Exception {
    Printing empty =
        new Printing() {
          @Override
          public List<String> printers() {
            return List.of("Office");
          }

          @Override
          public String print(Path pdf, Optional<String> printer) throws Exception {
            throw new FileSystemException("Office", null, "out of paper");
          }
        };
    try (Booth booth = booth(empty)) {
      report(booth);
      assertTrue(Files.size(only("audit-")) > 0);
      assertTrue(
          RecordsScreenTest.told(booth).contains("Not printed"), RecordsScreenTest.told(booth));
      assertTrue(
          booth.text("errand-trouble").contains("out of paper"), booth.text("errand-trouble"));
    }
  }
}
