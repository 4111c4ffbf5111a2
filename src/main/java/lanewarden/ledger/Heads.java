package lanewarden.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import lanewarden.ledger.LedgerFault.Kind;

/** The heads that slips and reports show, held against the rows as they pass. One thread. */
final class Heads {
  private final List<PrintedHead> open;

  Heads(Collection<PrintedHead> printed) {
    this.open = new ArrayList<>(printed);
  }

  List<LedgerFault> pass(long sequence, Sha256 hash) {
    List<LedgerFault> faults = new ArrayList<>(0);
    for (Iterator<PrintedHead> each = open.iterator(); each.hasNext(); ) {
      PrintedHead printed = each.next();
      if (printed.sequence() == sequence) {
        each.remove();
        if (!printed.matches(hash)) {
          faults.add(other(printed, "but that entry's hash begins with " + hash.shortHex()));
        }
      }
    }
    return faults;
  }

  /** What is wrong with the heads whose entries were not met. */
  List<LedgerFault> end(long last) {
    List<LedgerFault> faults = new ArrayList<>(open.size());
    for (PrintedHead printed : open) {
      faults.add(
          printed.sequence() > last
              ? new LedgerFault(
                  printed.sequence(),
                  Kind.CUT_TAIL,
                  "A slip shows head " + printed + ", but the ledger ends at entry " + last + ".")
              : other(printed, "but that entry cannot be read"));
    }
    return faults;
  }

  private static LedgerFault other(PrintedHead printed, String words) {
    return new LedgerFault(
        printed.sequence(), Kind.OTHER_HEAD, "A slip shows head " + printed + ", " + words + ".");
  }
}
