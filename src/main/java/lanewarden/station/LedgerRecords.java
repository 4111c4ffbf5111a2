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
          new CheckRecords(meaning, meaning.standing(), () -> People.names(found.officials())),
          VerificationView.rounds(meaning.standing()));
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  /**
   * The numbers of the checks that are meant, the newest first; none only where the ledger is not
   * sound, so that what there is need not be all.
   *
   * @param typed as {@link CheckRecords#meant} takes it
   * @throws StationException if what was typed is in several names, or a sound ledger has no such
   *     check
   */
  public List<Long> meant(String typed) throws StationException {
    List<Long> meant = checks.meant(typed);
    List<String> several = checks.several(typed);
    if (!several.isEmpty()) {
      throw CheckRecords.which("Nothing was shown.", typed, several);
    }
    if (meant.isEmpty() && sound) {
      throw CheckRecords.none("Nothing was shown.", typed);
    }
    return meant;
  }

  /** How the instrument kept its aim from shot to shot; empty before two shots can be compared. */
  public Optional<InstrumentChart> chart() {
    return InstrumentChart.of(verifications);
  }
}
