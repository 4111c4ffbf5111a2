package lanewarden.audit;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.schema.XMPBasicSchema;
import org.apache.xmpbox.xml.DomXmpParser;
import org.apache.xmpbox.xml.XmpParsingException;
import org.apache.xmpbox.xml.XmpSerializer;
import org.jspecify.annotations.Nullable;

/**
 * Sets a page of HTML as a PDF made to last: PDF/A-3 of level A (ISO 19005-3) and PDF/UA-1 (ISO
 * 14289-1), tagged, with bookmarks, its typefaces and its colours embedded.
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
   * @param enclosures files that travel inside it
   * @param made the time to put into the document
   * @throws IOException if it cannot be written
   * @throws RuntimeException if the page itself is wrong, which is a fault of this program
   */
  void print(String html, Instant made, List<Enclosure> enclosures, OutputStream out)
      throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    font(builder, Cut.TEXT, "text", PLAIN_WEIGHT);
    font(builder, Cut.BOLD, "text", BOLD_WEIGHT);
    font(builder, Cut.FIXED, "fixed", PLAIN_WEIGHT);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.usePdfUaAccessibility(true);
    builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A);
    builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
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
        Enclosure.into(document, enclosures, made);
        date(document, made);
        document.save(out);
      }
    }
  }

  /** The same time in both of the places that a PDF has for it, as PDF/A demands. */
  private static void date(PDDocument document, Instant made) throws IOException {
    Calendar time = GregorianCalendar.from(made.atZone(ZoneOffset.UTC));
    document.getDocumentInformation().setCreationDate(time);
    document.getDocumentInformation().setModificationDate(time);
    PDMetadata metadata = document.getDocumentCatalog().getMetadata();
    try {
      XMPMetadata xmp;
      try (InputStream in = metadata.exportXMPMetadata()) {
        xmp = new DomXmpParser().parse(in);
      }
      XMPBasicSchema basic = xmp.getXMPBasicSchema();
      basic.setCreateDate(time);
      basic.setModifyDate(time);
      basic.setMetadataDate(time);
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      new XmpSerializer().serialize(xmp, text, true);
      metadata.importXMPMetadata(text.toByteArray());
    } catch (XmpParsingException | TransformerException e) {
      throw new IllegalStateException("The report's own metadata could not be read back.", e);
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
