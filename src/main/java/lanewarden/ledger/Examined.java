package lanewarden.ledger;

import java.util.List;

/**
 * One entry as verification met it, with the faults found in it so far.
 *
 * @param entry what could be read
 * @param faults what is wrong with it; empty when nothing is
 */
public record Examined(Entry entry, List<LedgerFault> faults) {

  /** Copies the list. */
  public Examined {
    faults = List.copyOf(faults);
  }

  /** Whether nothing is wrong with this entry. */
  public boolean sound() {
    return faults.isEmpty();
  }
}
