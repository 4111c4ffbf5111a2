package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewarden.audit.press.Conformance;
import lanewarden.journal.Fact;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Verification;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The report against ISO 19005-3 (PDF/A-3, level A) and ISO 14289-1 (PDF/UA-1), by veraPDF; and the
 * files inside it.
 */
class LastingReportTest {
  @TempDir Path folder;

  @Test
  void isPdfA3aAndPdfUa1() throws Exception {
    try (ScriptedLedger ledger = DemoSizeLedger.make(folder.resolve("event.ledger"), 1, 11)) {
      assertEquals(List.of(), Conformance.faults(PrintedReport.of(ledger.file()).pdf()));
    }
  }

  @Test
  void theValidatorFindsFaultsWhereThereAre() throws Exception {
    Path plain = folder.resolve("plain.pdf");
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.save(plain.toFile());
    }
    assertFalse(Conformance.faults(plain).isEmpty());
  }

  private Map<String, byte[]> enclosed(Path pdf, Map<String, String> relations) throws Exception {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      var names = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      for (Map.Entry<String, PDComplexFileSpecification> file : names.entrySet()) {
        var embedded = file.getValue().getEmbeddedFileUnicode();
        byte[] bytes = embedded.toByteArray();
        assertEquals(bytes.length, embedded.getSize());
        files.put(file.getKey(), bytes);
        COSDictionary of = file.getValue().getCOSObject();
        relations.put(
            file.getKey(), of.getNameAsString("AFRelationship") + " " + embedded.getSubtype());
      }
      assertEquals(
          files.size(),
          document
              .getDocumentCatalog()
              .getCOSObject()
              .getCOSArray(COSName.getPDFName("AF"))
              .size());
    }
    return files;
  }

  @Test
  void carriesTheEntriesTheRuleBooksThePapersOfTheLineAndTheFormatInside() throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      ledger.adopt(ScriptedLedger.RULES.replace("2026-1", "2026-2"), "misprint");
      String other = ScriptedLedger.PROFILE.replace("900 ft/s", "899 ft/s");
      ledger.say(
          new Fact.StationOpened(
              "plain", other, "Lanewarden 0.9.0", null, "format = 1", null, null));
      Map<String, String> relations = new LinkedHashMap<>();
      Map<String, byte[]> files = enclosed(PrintedReport.of(file).pdf(), relations);
      assertEquals(
          Map.of(
              "entries.txt", "Source text/plain",
              "rule-book-1.toml", "Data application/toml",
              "rule-book-2.toml", "Data application/toml",
              "line-paper-1.toml", "Data application/toml",
              "line-paper-2.toml", "Data application/toml",
              "line-paper-3.toml", "Data application/toml",
              "ledger-format.md", "Data text/markdown"),
          relations);
      StringBuilder jws = new StringBuilder();
      Verification.of(file, List.of(), e -> jws.append(text(e.entry())).append('\n'));
      assertEquals(jws.toString(), text(files.get("entries.txt")));
      assertEquals(ScriptedLedger.RULES, text(files.get("rule-book-1.toml")));
      assertEquals(ScriptedLedger.PROFILE, text(files.get("line-paper-1.toml")));
      assertEquals(other, text(files.get("line-paper-2.toml")));
      assertEquals("format = 1", text(files.get("line-paper-3.toml")));
      try (InputStream packed = LastingReportTest.class.getResourceAsStream("ledger-format.md")) {
        assertArrayEquals(packed.readAllBytes(), files.get("ledger-format.md"));
      }
      assertTrue(text(files.get("ledger-format.md")).contains("## The script"));
      assertTrue(text(files.get("rule-book-2.toml")).contains("2026-2"));
    }
  }

  private static String text(Entry entry) {
    return text(entry.jws());
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
