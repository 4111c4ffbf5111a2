package lanewarden.audit.printing;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.print.DocFlavor;
import javax.print.StreamPrintService;
import javax.print.StreamPrintServiceFactory;

/** A printer of Java's own that prints PostScript into memory; made for one print. */
public final class PostScriptPaper {
  private final ByteArrayOutputStream paper = new ByteArrayOutputStream();
  private final StreamPrintService service =
      StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
          DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
          .getPrintService(paper);

  /** It alone. */
  public Printers printers() {
    return new Printers(List.of(service));
  }

  /** It takes no more. */
  public void runOut() {
    service.dispose();
  }

  /** What was printed. */
  public String text() {
    return paper.toString(StandardCharsets.ISO_8859_1);
  }

  /** How many pages were printed, by the comments that structure them (Adobe's 5001, %%Page). */
  public long pages() {
    return text().lines().filter(line -> line.startsWith("%%Page: ")).count();
  }
}
