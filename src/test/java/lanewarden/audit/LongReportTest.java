package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.audit.press.Conformance;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.TaggedText;
import lanewarden.journal.Check;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report of an event of some hundred checks: long tables, many pages. */
class LongReportTest {
  private static final int ROUNDS = 8;

  @TempDir static Path folder;
  private static ScriptedLedger ledger;
  private static PrintedReport report;

  @BeforeAll
  static void print() throws Exception {
    ledger = DemoSizeLedger.make(folder.resolve("event.ledger"), ROUNDS, 7);
    report = PrintedReport.of(ledger.file());
  }

  @AfterAll
  static void close() throws Exception {
    ledger.close();
  }

  @Test
  void isPdfA3aAndPdfUa1() throws Exception {
    assertEquals(List.of(), Conformance.faults(report.pdf()));
  }

  /** Where a heading may be first met is known from its text, not from the bookmark. */
  @Test
  void everyBookmarkLeadsToThePageOfItsHeading() throws Exception {
    try (PDDocument document = Loader.loadPDF(report.pdf().toFile())) {
      List<String> names = new ArrayList<>();
      int before = 0;
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        PDPage page = item.findDestinationPage(document);
        int number = document.getPages().indexOf(page) + 1;
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(number);
        one.setEndPage(number);
        String heading = item.getTitle().equals("Summary") ? "Speed check audit" : item.getTitle();
        String text = one.getText(document);
        assertTrue(
            text.lines().anyMatch(line -> line.startsWith(heading)), heading + " on " + number);
        assertTrue(number >= before, "bookmarks go forward");
        before = number;
        names.add(item.getTitle());
      }
      assertTrue(names.containsAll(List.of("Findings", "Every check", "Integrity")), "" + names);
      assertTrue(before > 30, "the last one is on page " + before);
    }
  }

  @Test
  void everyCheckIsARowOfItsTable() throws Exception {
    List<Check> checks = ledger.standing().checks();
    assertTrue(checks.size() >= 40 * ROUNDS);
    List<TaggedText> tables = TaggedText.of(report.pdf()).all("Table");
    TaggedText table =
        tables.stream()
            .filter(one -> one.all("TH").get(0).text().equals("Entries: check, verdict"))
            .findFirst()
            .orElseThrow();
    List<TaggedText> rows = table.inside().get(1).inside();
    assertEquals(checks.size(), rows.size());
    for (int i = 0; i < checks.size(); i++) {
      Check check = checks.get(i);
      List<TaggedText> cells = rows.get(i).inside();
      assertTrue(cells.get(0).text().startsWith(check.number() + " "), cells.get(0).text());
      String who = check.opened().bib() + " " + check.opened().name() + " ";
      assertTrue(cells.get(2).text().startsWith(who), cells.get(2).text());
      check
          .shots()
          .forEach(
              shot -> {
                String speed = shot.reading().speed().toString();
                assertTrue(cells.get(3).text().contains(speed), cells.get(3).text());
              });
      assertTrue(report.says(who.strip()), who);
    }
  }

  @Test
  void everyFontIsEmbeddedOnce() throws Exception {
    try (PDDocument document = Loader.loadPDF(report.pdf().toFile())) {
      List<Object> fonts = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        for (var name : page.getResources().getFontNames()) {
          Object font = page.getResources().getFont(name).getCOSObject();
          if (!fonts.contains(font)) {
            fonts.add(font);
          }
        }
      }
      assertEquals(Cut.values().length, fonts.size());
    }
  }
}
