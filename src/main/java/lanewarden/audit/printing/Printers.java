package lanewarden.audit.printing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.print.DocFlavor;
import javax.print.PrintException;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.SimpleDoc;
import javax.print.attribute.HashPrintRequestAttributeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.Orientation;
import org.apache.pdfbox.printing.PDFPageable;

/**
 * Prints PDFs on the printers of the system, without a dialog.
 *
 * @param services the printers, the system's usual one first
 */
public record Printers(List<PrintService> services) {
  private static final DocFlavor PAGES = DocFlavor.SERVICE_FORMATTED.PAGEABLE;

  /** Copies the list. */
  public Printers {
    services = List.copyOf(services);
  }

  /** The printers that the system has now. */
  public static Printers ofSystem() {
    PrintService usual = PrintServiceLookup.lookupDefaultPrintService();
    List<PrintService> all =
        Arrays.stream(PrintServiceLookup.lookupPrintServices(PAGES, null))
            .sorted((a, b) -> Boolean.compare(b.equals(usual), a.equals(usual)))
            .toList();
    return new Printers(all);
  }

  /** Their names. */
  public List<String> names() {
    return services.stream().map(PrintService::getName).toList();
  }

  /**
   * Prints a file.
   *
   * @param printer its name, or empty for the first
   * @return the name of the printer that took it
   * @throws PrintRefused if there is no such printer, or it refuses
   * @throws IOException if the file cannot be read
   */
  public String print(Path pdf, Optional<String> printer) throws PrintRefused, IOException {
    PrintService service = service(pdf, printer);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFPageable pages = new PDFPageable(document, Orientation.PORTRAIT);
      service
          .createPrintJob()
          .print(new SimpleDoc(pages, PAGES, null), new HashPrintRequestAttributeSet());
      return service.getName();
    } catch (PrintException e) {
      throw new PrintRefused(
          pdf, "The printer " + service.getName() + " refused it: " + e.getMessage() + ".");
    }
  }

  private PrintService service(Path pdf, Optional<String> printer) throws PrintRefused {
    if (services.isEmpty()) {
      throw new PrintRefused(pdf, "The system has no printer.");
    }
    if (printer.isEmpty()) {
      return services.get(0);
    }
    return services.stream()
        .filter(s -> s.getName().equals(printer.get()))
        .findFirst()
        .orElseThrow(
            () ->
                new PrintRefused(
                    pdf,
                    "No printer is called \""
                        + printer.get()
                        + "\"; there are "
                        + String.join(", ", names())
                        + "."));
  }
}
