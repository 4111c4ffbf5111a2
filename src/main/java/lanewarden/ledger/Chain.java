package lanewarden.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Finding.Signature;
import lanewarden.ledger.LedgerFault.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Judges findings in the order of the rows: links, sequence, station, and who may sign.
 *
 * <p>Owned by one thread.
 */
final class Chain {
  private final List<LedgerFault> faults = new ArrayList<>();
  private final Roll roll = new Roll();
  private final KeyDirectory keys;
  private final Strangers strangers;
  private @Nullable String station;
  private @Nullable Head head;
  private @Nullable Sha256 link = Sha256.none();
  private long expected = 1;
  private long rows;

  Chain(KeyDirectory keys, Strangers.Archive archive) {
    this.keys = keys;
    this.strangers = new Strangers(faults, keys, archive);
  }

  void fault(LedgerFault fault) {
    faults.add(fault);
  }

  /** Judges the next row; its entry, if readable, comes back with what is wrong with it. */
  Optional<Examined> judge(Finding finding) throws LedgerException {
    if (finding.row() instanceof Row.Unreadable stretch) {
      passOver(stretch);
      return Optional.empty();
    }
    rows++;
    int before = faults.size();
    faults.addAll(finding.faults());
    long sequence = finding.row().sequence();
    checkSequence(sequence);
    Optional<Entry> readable = finding.readable();
    if (readable.isPresent()) {
      judge(sequence, readable.get(), finding);
    }
    link = finding.hash();
    head = finding.hash() == null ? head : new Head(sequence, finding.hash());
    return readable.map(entry -> new Examined(entry, faults.subList(before, faults.size())));
  }

  private void passOver(Row.Unreadable stretch) {
    String which =
        stretch.last() == stretch.sequence()
            ? "Entry " + stretch.sequence()
            : "Entries " + stretch.sequence() + " to " + stretch.last();
    add(stretch.sequence(), Kind.UNREADABLE_ROW, which + " cannot be read: " + stretch.why() + ".");
    expected = stretch.last() + 1;
    link = null;
  }

  private void checkSequence(long sequence) {
    if (sequence > expected) {
      String which =
          sequence - 1 == expected
              ? "Entry " + expected + " is missing."
              : "Entries " + expected + " to " + (sequence - 1) + " are missing.";
      add(expected, Kind.GAP, which);
      // What a missing entry's hash was, nobody can tell.
      link = null;
    } else if (sequence < expected) {
      add(
          sequence,
          Kind.REPEATED,
          "Entry " + sequence + " stands after entry " + (expected - 1) + ".");
    }
    expected = Math.max(expected, sequence + 1);
  }

  private void judge(long sequence, Entry entry, Finding finding) throws LedgerException {
    if (link != null && !link.equals(entry.previous())) {
      add(
          sequence,
          Kind.BROKEN_LINK,
          "Entry " + sequence + " does not follow from the bytes of the entry before it.");
    }
    checkStation(sequence, entry);
    Signature signature = finding.signature();
    if (signature == Signature.UNCHECKED) {
      // The signer's key may have been met since this row was examined.
      signature = keys.check(entry);
    }
    if (signature == Signature.BAD) {
      faults.add(RowExaminer.badSignature(sequence));
    }
    Optional<Suspension> suspension = roll.suspension(entry.signer());
    if (suspension.isPresent()) {
      add(sequence, Kind.SIGNED_WHILE_SUSPENDED, whileSuspended(sequence, suspension.get()));
    } else if (sequence != 1 && !roll.maySign(entry.signer())) {
      strangers.add(entry, sequence, signature);
    } else if (signature != Signature.BAD
        && entry.station().equals(station)
        // An entry in another place than it says of itself tells nothing about keys.
        && entry.sequence() == sequence) {
      roll.take(entry).ifPresent(faults::add);
      greet(entry);
    }
  }

  private static String whileSuspended(long sequence, Suspension suspension) {
    return "Entry %d is signed by %s, whom entry %d had suspended."
        .formatted(sequence, suspension.official().name(), suspension.sequence());
  }

  private void checkStation(long sequence, Entry entry) {
    if (station == null) {
      station = entry.station();
    } else if (!station.equals(entry.station())) {
      add(
          sequence,
          Kind.WRONG_STATION,
          "Entry " + sequence + " is of station " + entry.station() + ", not " + station + ".");
    }
  }

  private void greet(Entry entry) throws LedgerException {
    Optional<Enrolled> newcomer =
        KeyNotice.key(entry.payload()).flatMap(key -> roll.official(key.thumbprint()));
    if (newcomer.isPresent()) {
      strangers.greet(newcomer.get());
    }
  }

  private void add(long sequence, Kind kind, String words) {
    faults.add(new LedgerFault(sequence, kind, words));
  }

  long rows() {
    return rows;
  }

  Optional<Head> head() {
    return Optional.ofNullable(head);
  }

  Optional<String> station() {
    return Optional.ofNullable(station);
  }

  Roll roll() {
    return roll;
  }

  List<LedgerFault> faults() {
    return List.copyOf(faults);
  }
}
