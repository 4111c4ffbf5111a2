package lanewarden.audit;

import com.openhtmltopdf.pdfboxout.PDFCreationListener;
import com.openhtmltopdf.pdfboxout.PageSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Hands out the sheets of a document, and says which one is being printed. */
final class Sheets implements PageSupplier, PDFCreationListener {
  private final Announcer announcer;
  private final int from;
  private final int to;
  private int pages;
  private int handedOut;

  Sheets(Announcer announcer, int from, int to) {
    this.announcer = announcer;
    this.from = from;
    this.to = to;
  }

  @Override
  public PDPage requestPage(
      PDDocument document, float width, float height, int number, int shadowPage) {
    PDPage page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
    handedOut++;
    // The first sheet is asked for before the pages are counted.
    String of = pages == 0 ? "" : " of " + pages;
    announcer.say("Printing page " + handedOut + of, from, to, handedOut, pages);
    return page;
  }

  @Override
  public void preWrite(PdfBoxRenderer renderer, int pageCount) {
    pages = pageCount;
  }

  @Override
  public void preOpen(PdfBoxRenderer renderer) {
    // The first word comes with the first sheet.
  }

  @Override
  public void onClose(PdfBoxRenderer renderer) {
    // The last word is the report's own, when the file is in its place.
  }
}
