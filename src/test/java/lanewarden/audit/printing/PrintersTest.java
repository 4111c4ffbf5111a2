package lanewarden.audit.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files printed without a dialog. */
class PrintersTest {
  @TempDir Path folder;
  private Path pdf;

  @BeforeEach
  void make() throws Exception {
    pdf = folder.resolve("three.pdf");
    try (PDDocument document = new PDDocument()) {
      for (int page = 0; page < 3; page++) {
        document.addPage(new PDPage());
      }
      document.save(pdf.toFile());
    }
  }

  @Test
  void everyPageIsPrintedOnTheUsualPrinterOrOnTheOneThatIsNamed() throws Exception {
    PostScriptPaper usual = new PostScriptPaper();
    String name = usual.printers().print(pdf, Optional.empty());
    assertTrue(usual.text().startsWith("%!PS"));
    assertEquals(3, usual.pages());
    assertEquals(List.of(name), usual.printers().names());
    PostScriptPaper named = new PostScriptPaper();
    assertEquals(name, named.printers().print(pdf, Optional.of(name)));
    assertEquals(3, named.pages());
  }

  @Test
  void whereNoPrinterIsCalledSoThoseThatThereAreAreNamed() {
    Printers printers = new PostScriptPaper().printers();
    PrintRefused refused =
        assertThrows(PrintRefused.class, () -> printers.print(pdf, Optional.of("Nowhere")));
    assertEquals("three.pdf was not printed.", refused.what());
    assertTrue(refused.why().contains(printers.names().get(0)), refused.why());
  }

  @Test
  void whereThereIsNoPrinterTheFileIsToBePrintedElsewhere() {
    PrintRefused refused =
        assertThrows(
            PrintRefused.class, () -> new Printers(List.of()).print(pdf, Optional.empty()));
    assertEquals("NO-PRINTER", refused.code());
    assertTrue(refused.remedy().contains("print the PDF elsewhere"), refused.remedy());
  }

  @Test
  void aPrinterThatRefusesIsNamedWithWhatItSays() throws Exception {
    PostScriptPaper paper = new PostScriptPaper();
    Printers printers = paper.printers();
    String name = printers.names().get(0);
    paper.runOut();
    PrintRefused refused =
        assertThrows(PrintRefused.class, () -> printers.print(pdf, Optional.empty()));
    assertTrue(refused.why().startsWith("The printer " + name + " refused it: "), refused.why());
  }
}
