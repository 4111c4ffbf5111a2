package lanewarden.station;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lanewarden.journal.Docket;
import lanewarden.journal.FactRefused;
import lanewarden.journal.Standing;
import lanewarden.ledger.Examined;

/**
 * What the entries of a ledger amount to while it is verified; finds one that is signed well and
 * makes no sense. For one thread.
 */
final class LedgerMeaning {
  private final Standing standing = new Standing();
  private final Map<String, Integer> kinds = new TreeMap<>();
  private Optional<Instant> last = Optional.empty();
  private Optional<LedgerInspection.Fault> fault = Optional.empty();

  /** Takes the next entry. */
  void take(Examined examined) {
    kinds.merge(examined.entry().kind(), 1, Integer::sum);
    Instant at = examined.entry().at();
    last = Optional.of(last.filter(at::isBefore).orElse(at));
    // Behind the first that cannot be understood, others may fail only because of it
    if (fault.isEmpty() && examined.sound()) {
      try {
        standing.apply(examined.entry());
      } catch (FactRefused e) {
        fault =
            Optional.of(
                new LedgerInspection.Fault(
                    e.sequence(),
                    "not understood",
                    String.valueOf(e.getMessage())
                        + ". Behind it, no entry was tried for its meaning."));
      }
    }
  }

  /** How things stand, as far as the entries could be understood. */
  Standing standing() {
    return standing;
  }

  Docket docket() {
    return standing.docket();
  }

  /** How many entries there are of each kind. */
  Map<String, Integer> kinds() {
    return kinds;
  }

  /** The latest time at which an entry says it was signed. */
  Optional<Instant> last() {
    return last;
  }

  /** The first entry that could not be understood. */
  Optional<LedgerInspection.Fault> fault() {
    return fault;
  }
}
