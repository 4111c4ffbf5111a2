package lanewarden.station;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What the files that are made of a ledger are called if nobody says otherwise: with its head, so
 * that what was made of it before stays.
 *
 * @param head of the ledger; nothing where none can be read
 */
public record LedgerNames(Optional<String> head) {

  /**
   * Those of a ledger as it is now.
   *
   * @throws StationException if it cannot be read as a ledger at all
   */
  public static LedgerNames of(Path ledger) throws StationException {
    return new LedgerNames(LedgerInspection.headNow(ledger));
  }

  /**
   * Of a report.
   *
   * @param named whether names stand in it
   * @param sealed whether it is sealed
   */
  public String report(boolean named, boolean sealed) {
    return with(named ? "audit-" : "public-", sealed ? "-sealed.pdf" : ".pdf");
  }

  /** Of anything else: the head between beginning and end. */
  public String with(String start, String end) {
    return start + head.orElse("without-head") + end;
  }
}
