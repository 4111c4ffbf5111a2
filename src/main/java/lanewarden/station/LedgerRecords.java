package lanewarden.station;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;

/**
 * What can be looked into in a ledger without its station, as far as its entries could be
 * understood. Only reads.
 *
 * @param sound whether nothing is wrong with the ledger: else none of it is proved
 * @param checks that were made
 * @param verifications of the instrument, in order
 */
public record LedgerRecords(
    boolean sound, CheckRecords checks, List<VerificationView.Round> verifications) {

  /** Copies the list. */
  public LedgerRecords {
    verifications = List.copyOf(verifications);
  }

  /**
   * Verifies a ledger and folds it.
   *
   * @param ledgerOrFolder a ledger file, or the folder of an event
   * @throws StationException if it cannot be read at all
   */
  public static LedgerRecords of(Path ledgerOrFolder) throws StationException {
    Path ledger = EventFolder.ledgerAt(ledgerOrFolder);
    LedgerMeaning meaning = new LedgerMeaning();
    try {
      Verification found = Verification.of(ledger, List.of(), meaning::take);
      return new LedgerRecords(
          found.sound() && meaning.fault().isEmpty(),
          new CheckRecords(
              meaning, meaning.standing(), () -> People.names(found.officials()), Optional.empty()),
          VerificationView.rounds(meaning.standing()));
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  /** How the instrument kept its aim from shot to shot; empty before two shots can be compared. */
  public Optional<InstrumentChart> chart() {
    return InstrumentChart.of(verifications);
  }
}
