package lanewarden.kiosk.protest;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.slip.Slips;

/** Makes and prints the slip of a check; off the screen's thread. */
public interface SlipMaker {

  /** The slips of the audit, on the printers of the system. */
  static SlipMaker of(Slips slips) {
    return new SlipMaker() {
      @Override
      public List<String> printers() {
        return slips.printers();
      }

      @Override
      public void make(Path ledger, long check, Path pdf) throws Exception {
        slips.write(ledger, Slips.NUMBERED + check, pdf);
      }

      @Override
      public String print(Path pdf, Optional<String> printer) throws Exception {
        return slips.print(pdf, printer);
      }
    };
  }

  /** The names of the system's printers, the usual one first. */
  List<String> printers();

  /**
   * Makes the slip.
   *
   * @param ledger the ledger's file, which may be open
   * @param check the number of the check
   * @param pdf the file to write
   * @throws Exception whatever keeps it from being made; the screen shows it
   */
  void make(Path ledger, long check, Path pdf) throws Exception;

  /**
   * Prints a slip that was made, without a dialog.
   *
   * @param printer its name, or empty for the system's usual one
   * @return the name of the printer that took it
   * @throws Exception whatever keeps it from being printed; the screen shows it
   */
  String print(Path pdf, Optional<String> printer) throws Exception;
}
