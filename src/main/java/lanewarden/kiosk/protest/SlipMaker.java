package lanewarden.kiosk.protest;

import java.nio.file.Path;
import lanewarden.audit.slip.Slips;
import lanewarden.journal.CheckSought;

/** Makes the slip of a check; off the screen's thread. */
@FunctionalInterface
public interface SlipMaker {

  /** The slips of the audit. */
  static SlipMaker of(Slips slips) {
    return slips::write;
  }

  /**
   * Makes the slip.
   *
   * @param ledger the ledger's file, which may be open
   * @param which a bib, whose last check is meant, or a check as {@link #numbered} writes it
   * @param pdf the file to write
   * @throws Exception whatever keeps it from being made; the screen shows it
   */
  Slips.Written make(Path ledger, String which, Path pdf) throws Exception;

  /** A check by its number, be a bib the same. */
  static String numbered(String number) {
    return CheckSought.NUMBERED + number;
  }
}
