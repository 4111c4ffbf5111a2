package lanewarden.kiosk.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.printing.Printers;

/** Prints what was made; off the screen's thread. */
public interface Printing {

  /** On the printers that the system has at the time. */
  static Printing onSystem() {
    return new Printing() {
      @Override
      public List<String> printers() {
        return Printers.ofSystem().names();
      }

      @Override
      public String print(Path pdf, Optional<String> printer) throws Exception {
        return Printers.ofSystem().print(pdf, printer);
      }
    };
  }

  /** The names of the printers, the usual one first. */
  List<String> printers();

  /**
   * Prints a file without a dialog.
   *
   * @param printer its name, or empty for the usual one
   * @return the name of the printer that took it
   * @throws Exception whatever keeps it from being printed; the screen shows it
   */
  String print(Path pdf, Optional<String> printer) throws Exception;
}
