package lanewarden.station;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.journal.FactRefused;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Examined;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;

/** The heads of other stations that a ledger holds as a witness. */
final class WitnessedHeads {
  private final List<FrameFact.HeadWitnessed> all = new ArrayList<>();

  private WitnessedHeads() {}

  /**
   * Verifies a ledger and collects what it witnesses.
   *
   * @param ledgerOrFolder of the witness
   * @throws StationException {@code WITNESS-UNSOUND} if it is not sound itself; or if it cannot be
   *     read
   */
  static WitnessedHeads in(Path ledgerOrFolder) throws StationException {
    Path ledger = EventFolder.ledgerAt(ledgerOrFolder);
    WitnessedHeads heads = new WitnessedHeads();
    try {
      Verification found = Verification.of(ledger, List.of(), heads::take);
      if (!found.sound()) {
        throw StationException.stuck(
            new Trouble(
                "Nothing was held against the heads in " + ledger + ".",
                "The witness's ledger is not sound itself: " + found.faults().get(0).words(),
                "Verify that ledger first, and use a sound copy.",
                "WITNESS-UNSOUND",
                Trouble.Kind.PROOF));
      }
      return heads;
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  private void take(Examined examined) {
    try {
      Optional<Fact> fact = FactJson.read(examined.entry());
      if (fact.isPresent() && fact.get() instanceof FrameFact.HeadWitnessed head) {
        all.add(head);
      }
    } catch (FactRefused of) {
      // What the witness's ledger says of other things is no matter here; verify tells it.
      return;
    }
  }

  /** The heads of a station's ledger, as printed. */
  List<String> of(String station) {
    return all.stream()
        .filter(head -> head.station().equals(station))
        .map(FrameFact.HeadWitnessed::head)
        .toList();
  }
}
