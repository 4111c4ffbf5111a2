package lanewarden.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.ledger.Finding.Signature;
import lanewarden.ledger.LedgerFault.Kind;

/**
 * Entries whose signer was not enrolled when they were met; an enrolment that comes later changes
 * what the fault is called. Owned by one thread.
 */
final class Strangers {

  /** Reads one earlier row again. */
  interface Archive {
    Optional<Entry> entry(long sequence) throws LedgerException;
  }

  private record Stranger(long sequence, int faultAt, boolean checked) {}

  private final Map<String, List<Stranger>> bySigner = new HashMap<>();
  private final List<LedgerFault> faults;
  private final KeyDirectory keys;
  private final Archive archive;

  /** Adds to and amends this list of faults. */
  Strangers(List<LedgerFault> faults, KeyDirectory keys, Archive archive) {
    this.faults = faults;
    this.keys = keys;
    this.archive = archive;
  }

  void add(Entry entry, long sequence, Signature signature) {
    bySigner
        .computeIfAbsent(entry.signer(), signer -> new ArrayList<>())
        .add(new Stranger(sequence, faults.size(), signature != Signature.UNCHECKED));
    faults.add(
        new LedgerFault(
            sequence,
            Kind.UNKNOWN_SIGNER,
            "Entry "
                + sequence
                + " is signed with the key "
                + entry.signer()
                + ", which nobody enrolled."));
  }

  /** Someone was just enrolled. */
  void greet(Enrolled newcomer) throws LedgerException {
    List<Stranger> earlier = bySigner.remove(newcomer.thumbprint());
    if (earlier == null) {
      return;
    }
    for (Stranger one : earlier) {
      faults.set(one.faultAt(), tooEarly(one.sequence(), newcomer));
      if (!one.checked()) {
        checkLate(one.sequence());
      }
    }
  }

  private static LedgerFault tooEarly(long sequence, Enrolled newcomer) {
    String words =
        "Entry %d is signed by %s, whom only entry %d enrols."
            .formatted(sequence, newcomer.name(), newcomer.sequence());
    return new LedgerFault(sequence, Kind.SIGNED_BEFORE_ENROLMENT, words);
  }

  private void checkLate(long sequence) throws LedgerException {
    Optional<Entry> entry = archive.entry(sequence);
    if (entry.isPresent() && keys.check(entry.get()) == Signature.BAD) {
      faults.add(RowExaminer.badSignature(sequence));
    }
  }
}
