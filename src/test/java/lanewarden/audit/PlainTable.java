package lanewarden.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.press.Cut;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The checks of a report as a table and nothing more: drawn with PDFBox, or as a page of HTML. */
record PlainTable(List<Check> checks) {
  private static final float SIZE = 7;
  private static final float MARGIN = 42;

  /** Each check as a row of text, with the same typeface embedded. */
  void draw(Path pdf) throws Exception {
    try (PDDocument document = new PDDocument();
        RandomAccessReadBuffer bytes = new RandomAccessReadBuffer(Cut.TEXT.bytes())) {
      PDFont font = PDType0Font.load(document, new TTFParser().parse(bytes), true);
      PDPageContentStream page = null;
      float y = 0;
      for (Check check : checks) {
        if (page == null || y < MARGIN) {
          if (page != null) {
            page.close();
          }
          PDPage sheet = new PDPage(PDRectangle.A4);
          document.addPage(sheet);
          page = new PDPageContentStream(document, sheet);
          y = PDRectangle.A4.getHeight() - MARGIN;
        }
        y = row(check, page, font, y);
      }
      if (page != null) {
        page.close();
      }
      document.save(pdf.toFile());
    }
  }

  private static List<String> readings(Check check) {
    return check.shots().stream().map(shot -> shot.reading().speed().toString()).toList();
  }

  private static String outcome(Check check) {
    return OutcomeMark.of(check).shape() + " " + OutcomeMark.of(check).word();
  }

  private static float row(Check check, PDPageContentStream page, PDFont font, float y)
      throws Exception {
    float below = y;
    cell(page, font, 0, y, String.valueOf(check.number()));
    cell(page, font, 40, y, Wording.time(check.at()));
    cell(page, font, 130, y, check.opened().bib() + " " + check.opened().name());
    cell(page, font, 130, y - SIZE - 2, check.opened().division());
    for (String reading : readings(check)) {
      cell(page, font, 260, below, reading);
      below -= SIZE + 2;
    }
    cell(page, font, 320, y, outcome(check));
    cell(page, font, 320, y - SIZE - 2, CheckRow.reason(check));
    return below - 4;
  }

  private static void cell(PDPageContentStream page, PDFont font, float x, float y, String text)
      throws Exception {
    page.beginText();
    page.setFont(font, SIZE);
    page.newLineAtOffset(MARGIN + x, y);
    page.showText(text);
    page.endText();
  }

  /** The same cells as a page of HTML. */
  void write(Path html) throws Exception {
    StringBuilder page = new StringBuilder("<!DOCTYPE html><html><head><meta charset=\"utf-8\">");
    page.append("<title>Checks</title></head><body><table style=\"font-size: 7pt\">\n");
    for (Check check : checks) {
      page.append("<tr><td>").append(check.number());
      page.append("</td><td>").append(Wording.time(check.at()));
      page.append("</td><td>").append(check.opened().bib()).append(' ');
      page.append(check.opened().name()).append("<br>").append(check.opened().division());
      page.append("</td><td>").append(String.join("<br>", readings(check)));
      page.append("</td><td>").append(outcome(check)).append("<br>");
      page.append(CheckRow.reason(check)).append("</td></tr>\n");
    }
    Files.writeString(html, page.append("</table></body></html>"));
  }
}
