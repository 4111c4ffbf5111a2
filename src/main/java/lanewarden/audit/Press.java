package lanewarden.audit;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * Sets a page of HTML as a PDF: tagged, with bookmarks, its typefaces embedded.
 *
 * <p>Owned by one thread.
 */
final class Press {
  private static final int PLAIN_WEIGHT = 400;
  private static final int BOLD_WEIGHT = 700;

  /** Held, because a logger that nobody holds forgets its level. */
  private final Logger pdfLogger = Logger.getLogger("org.apache.pdfbox");

  private final Logger fontLogger = Logger.getLogger("org.apache.fontbox");
  private final Announcer announcer;
  private final int from;
  private final int to;
  private @Nullable String trouble;

  /**
   * @param from where in the whole this work begins
   * @param to where it ends
   */
  Press(Announcer announcer, int from, int to) {
    this.announcer = announcer;
    this.from = from;
    this.to = to;
    pdfLogger.setLevel(Level.SEVERE);
    fontLogger.setLevel(Level.SEVERE);
    XRLog.setLoggerImpl(new QuietLog());
  }

  /**
   * Sets the page and writes it.
   *
   * @param made the time to put into the document
   * @throws IOException if it cannot be written
   * @throws RuntimeException if the page itself is wrong, which is a fault of this program
   */
  void print(String html, Instant made, OutputStream out) throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    font(builder, Cut.TEXT, "text", PLAIN_WEIGHT);
    font(builder, Cut.BOLD, "text", BOLD_WEIGHT);
    font(builder, Cut.FIXED, "fixed", PLAIN_WEIGHT);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.usePdfUaAccessibility(true);
    builder.useUnicodeLineBreaker(new WordBreaks());
    builder.withProducer("Lanewarden");
    builder.withDiagnosticConsumer(this::note);
    builder.withHtmlContent(html, null);
    Sheets sheets = new Sheets(announcer, (from + to) / 2, to);
    builder.usePageSupplier(sheets);
    announcer.say("Setting the pages", from);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.setListener(sheets);
      renderer.layout();
      try (PDDocument document = renderer.createPDFKeepOpen()) {
        refuseTrouble();
        ZonedDateTime time = made.atZone(ZoneOffset.UTC);
        document.getDocumentInformation().setCreationDate(GregorianCalendar.from(time));
        document.getDocumentInformation().setModificationDate(GregorianCalendar.from(time));
        document.save(out);
      }
    }
  }

  private static void font(PdfRendererBuilder builder, Cut cut, String family, int weight) {
    Set<FSFontUseCase> text = EnumSet.of(FSFontUseCase.DOCUMENT);
    builder.useFont(cut::bytes, family, weight, FontStyle.NORMAL, true, text);
  }

  private void note(Diagnostic diagnostic) {
    boolean grave =
        diagnostic.hasError() || diagnostic.getLevel().intValue() >= Level.SEVERE.intValue();
    if (trouble == null && grave) {
      trouble = diagnostic.getFormattedMessage();
    }
  }

  /** A page that was set otherwise than written must not pass for the report. */
  private void refuseTrouble() {
    if (trouble != null) {
      throw new IllegalStateException("The report could not be set as it is written: " + trouble);
    }
  }
}
