package lanewarden.ledger;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a row shows on its own, before its neighbours are looked at.
 *
 * @param row the row
 * @param hash hash of the stored bytes, if there are any
 * @param entry the entry, if the bytes are one
 * @param signature whether the signature fits
 * @param faults what is wrong with the row on its own
 */
record Finding(
    Row row,
    @Nullable Sha256 hash,
    @Nullable Entry entry,
    Signature signature,
    List<LedgerFault> faults) {

  /** The three things that can be said of a signature. */
  enum Signature {
    GOOD,
    BAD,
    /** The signer's key was not known yet, or there is no entry to check. */
    UNCHECKED
  }

  Optional<Entry> readable() {
    return Optional.ofNullable(entry);
  }
}
