package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanewarden.audit.AuditReport;
import lanewarden.audit.PrintedReport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables on paper, against what an independent reader of the PDF finds in them. */
class DrawnTableTest {
  @TempDir Path folder;

  private Path print(String body) throws Exception {
    Path pdf = folder.resolve("tables.pdf");
    String html =
        "<html><head><title>Tables</title><meta name=\"subject\" content=\"Rows\"/>"
            + "<meta name=\"author\" content=\"A test\"/>"
            + "<link rel=\"stylesheet\" href=\"report.css\"/>"
            + "<bookmarks><bookmark name=\"Tables\" href=\"#top\"/></bookmarks></head><body>"
            + "<h1 id=\"top\">Tables</h1>"
            + body
            + "</body></html>";
    try (Typefaces faces = Typefaces.open();
        OutputStream out = Files.newOutputStream(pdf)) {
      new Press(AuditReport.class, new Announcer(step -> {}), 0, Announcer.WHOLE)
          .print(html, faces, PrintedReport.MADE, List.of(), out);
    }
    return pdf;
  }

  private static String table(List<String> rows) {
    return "<table class=\"list\"><thead><tr><th scope=\"col\" class=\"number\">Entry</th>"
        + "<th scope=\"col\">What was found</th></tr></thead><tbody>"
        + String.join("", rows)
        + "</tbody></table>";
  }

  private static String row(String first, String second) {
    return "<tr><td class=\"number\"><b>" + first + "</b></td><td>" + second + "</td></tr>";
  }

  private static List<String> pages(Path pdf) throws Exception {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(page);
        one.setEndPage(page);
        pages.add(one.getText(document).replaceAll("\\s+", " "));
      }
    }
    return pages;
  }

  private static String words(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(i -> "w" + i).collect(Collectors.joining(" "));
  }

  @Test
  void wrapsWithoutLosingAWord() throws Exception {
    Path pdf = print(table(List.of(row("7", words(300)))));
    assertTrue(String.join("", pages(pdf)).contains("7 " + words(300)));
    assertEquals(List.of(), Conformance.faults(pdf));
  }

  @Test
  void aWordWiderThanItsColumnGoesOnInTheNextLineWhole() throws Exception {
    String word = "0123456789abcdef".repeat(20);
    Path pdf = print(table(List.of(row("7", word))));
    assertEquals(word, TaggedText.of(pdf).all("TD").get(1).text(), "no space got into the word");
    assertTrue(PrintedReport.textOf(pdf).replace(" ", "").contains(word));
  }

  @Test
  void everyRowStandsWholeOnOnePageUnderTheHeadings() throws Exception {
    List<String> rows =
        IntStream.rangeClosed(1, 200)
            .mapToObj(i -> row("n" + i, "begins" + i + " " + words(40) + " ends" + i))
            .toList();
    List<String> pages = pages(print(table(rows)));
    assertTrue(pages.size() > 5);
    for (String page : pages) {
      assertEquals(2, page.split("Entry What was found", -1).length, page);
    }
    for (int i = 1; i <= 200; i++) {
      int row = i;
      List<String> with =
          pages.stream().filter(page -> page.contains("n" + row + " begins" + row + " ")).toList();
      assertEquals(1, with.size(), "row " + row);
      assertTrue(with.get(0).contains("w40 ends" + row + " "), "row " + row + " is split");
    }
  }

  @Test
  void aRowHigherThanAPageIsPrintedWhole() throws Exception {
    Path pdf = print(table(List.of(row("1", "before"), row("2", words(3000)), row("3", "after"))));
    List<String> pages = pages(pdf);
    assertTrue(pages.size() > 2);
    TaggedText cell = TaggedText.of(pdf).all("TD").get(3);
    assertEquals(words(3000), cell.text(), "one cell, though it stands on several pages");
    for (int i = 1; i <= 3000; i++) {
      String word = "w" + i + " ";
      assertEquals(1, pages.stream().filter(page -> page.contains(" " + word)).count(), word);
    }
    assertTrue(pages.get(pages.size() - 1).contains("3 after"));
    assertEquals(List.of(), Conformance.faults(pdf));
  }

  @Test
  void rowsAndCellsAreFoundThroughTheirTags() throws Exception {
    List<String> rows =
        IntStream.rangeClosed(1, 120).mapToObj(i -> row("n" + i, "<s>found</s> " + i)).toList();
    Path pdf = print(table(rows));
    TaggedText table = TaggedText.of(pdf).all("Table").get(0);
    assertEquals(List.of("THead", "TBody"), table.inside().stream().map(t -> t.type()).toList());
    List<TaggedText> headings = table.inside().get(0).all("TH");
    assertEquals(List.of("Entry", "What was found"), headings.stream().map(t -> t.text()).toList());
    assertTrue(headings.stream().allMatch(t -> t.scope().equals("Column")));
    List<TaggedText> body = table.inside().get(1).inside();
    assertEquals(120, body.size(), "the headings of later pages are no rows");
    for (int i = 1; i <= 120; i++) {
      assertEquals("TR", body.get(i - 1).type());
      assertEquals(
          List.of("n" + i, "found " + i),
          body.get(i - 1).inside().stream().map(t -> t.text()).toList());
    }
  }

  @Test
  void headingsOfRowsSaySo() throws Exception {
    Path pdf =
        print(
            "<table class=\"facts\"><tbody><tr><th scope=\"row\">Station</th><td>East</td></tr>"
                + "</tbody></table>");
    assertEquals("Row", TaggedText.of(pdf).all("TH").get(0).scope());
    assertEquals(List.of(), Conformance.faults(pdf));
  }

  @Test
  void aHeadingIsNeverTheLastOnItsPage() throws Exception {
    for (int lines = 40; lines < 75; lines++) {
      String text = "<p>line</p>".repeat(lines) + "<h2>Heading</h2>";
      List<String> pages = pages(print(text + table(List.of(row("1", "first")))));
      String with =
          pages.stream().filter(page -> page.contains("Heading")).findFirst().orElseThrow();
      assertTrue(with.contains("Heading Entry What was found 1 first"), lines + " lines: " + with);
      assertFalse(pages.get(pages.size() - 1).isBlank());
    }
  }

  @Test
  void listsInCellsAreLists() throws Exception {
    Path pdf = print(table(List.of(row("1", "<ul><li>one</li><li>two</li></ul>"))));
    List<TaggedText> items = TaggedText.of(pdf).all("TD").get(1).all("LBody");
    assertEquals(List.of("one", "two"), items.stream().map(t -> t.text()).toList());
    assertEquals(List.of(), Conformance.faults(pdf));
  }
}
