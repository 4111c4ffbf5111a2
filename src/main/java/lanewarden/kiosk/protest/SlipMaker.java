package lanewarden.kiosk.protest;

import java.nio.file.Path;
import lanewarden.audit.slip.Slips;

/** Makes the slip of a check; off the screen's thread. */
@FunctionalInterface
public interface SlipMaker {

  /** The slips of the audit. */
  static SlipMaker of(Slips slips) {
    return (ledger, check, pdf) -> {
      Slips.Written unused = slips.write(ledger, Slips.NUMBERED + check, pdf);
    };
  }

  /**
   * Makes the slip.
   *
   * @param ledger the ledger's file, which may be open
   * @param check the number of the check
   * @param pdf the file to write
   * @throws Exception whatever keeps it from being made; the screen shows it
   */
  void make(Path ledger, long check, Path pdf) throws Exception;
}
