package lanewarden.ledger;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * A station's ledger, open for writing: signed entries, each chained to the one before.
 *
 * <p>{@link #append} returns only when the entries are durable on disk. One writer at a time has a
 * ledger open; readers ({@link Verification}) may work beside it. Times come from the clock given,
 * seconds from the monotonic nanoseconds given. Any thread may call; calls take turns.
 */
public final class Ledger implements AutoCloseable {
  private static final int MICROSECONDS = 6;
  private static final long NANOS_A_MICRO = 1000;

  private final Path file;
  private final String station;
  private final Clock clock;
  private final LongSupplier nanos;
  private final long openedAt;
  private final WriterLock lock;
  private final WrittenHere here;
  private final Store store;
  private final Roll roll;
  private Head head;
  private boolean headKnown = true;
  private boolean closed;

  Ledger(
      Path file,
      WriterLock lock,
      WrittenHere here,
      Store store,
      Verification found,
      Clock clock,
      LongSupplier nanos) {
    this.file = file;
    this.lock = lock;
    this.here = here;
    this.store = store;
    this.station = found.station().orElseThrow();
    this.head = found.head().orElseThrow();
    this.roll = found.roll();
    this.clock = clock;
    this.nanos = nanos;
    this.openedAt = nanos.getAsLong();
  }

  /**
   * Makes a new ledger, whose first entry names the organizer's key and is signed with it.
   *
   * @param station the name of the station this chain belongs to: 1 to 100 characters, no quotation
   *     mark, backslash or control character
   * @throws LedgerException {@code LEDGER-EXISTS} when the path is taken, by whatever; or when the
   *     file cannot be made
   * @throws IllegalArgumentException when the station's name is not as said
   */
  public static Ledger create(
      Path file, String station, SigningKey organizer, Clock clock, LongSupplier nanos)
      throws LedgerException {
    if (!PayloadText.isStationName(station)) {
      throw new IllegalArgumentException(
          "A station's name has 1 to 100 characters, without quotation marks, backslashes and"
              + " control characters; found \""
              + station
              + "\".");
    }
    return new LedgerOpening(file, clock, nanos).create(station, organizer);
  }

  /**
   * Opens an existing ledger for writing, after verifying all of it.
   *
   * @throws LedgerException {@code LEDGER-MISSING}, {@code LEDGER-EMPTY}, {@code LEDGER-FOREIGN},
   *     {@code LEDGER-CUT}, {@code LEDGER-NEWER} when the file is none; {@code LEDGER-UNSOUND} when
   *     verification finds a fault; {@code LEDGER-IN-USE} when another writer has it
   */
  public static Ledger open(Path file, Clock clock, LongSupplier nanos) throws LedgerException {
    return new LedgerOpening(file, clock, nanos).open();
  }

  /**
   * Refuses while somebody writes into a ledger, and leaves it alone.
   *
   * @throws LedgerException {@code LEDGER-IN-USE} when a writer has it
   */
  public static void requireUnused(Path file) throws LedgerException {
    WriterLock.take(file).close();
  }

  /**
   * Appends signed entries in one transaction, all or none.
   *
   * @return the entries as stored, durable on disk
   * @throws LedgerException {@code LEDGER-NOT-ENROLLED} when nobody enrolled the signer, {@code
   *     LEDGER-SUSPENDED} when the organizer suspended the signer; {@code LEDGER-DISK-FULL}, {@code
   *     LEDGER-READ-ONLY}, {@code LEDGER-BUSY}, {@code LEDGER-IO} when the entries were not
   *     confirmed; {@code LEDGER-HEAD-MOVED} when another program wrote
   * @throws IllegalArgumentException when there is no draft, or one has a kind that is the ledger's
   *     own
   */
  public synchronized List<Entry> append(SigningKey signer, List<Draft> drafts)
      throws LedgerException {
    if (drafts.isEmpty()) {
      throw new IllegalArgumentException("There is nothing to append.");
    }
    for (Draft draft : drafts) {
      if (KeyNotice.isReserved(draft.kind())) {
        throw new IllegalArgumentException("Only the ledger itself writes " + draft.kind() + ".");
      }
    }
    Optional<Suspension> suspension = roll.suspension(signer.thumbprint());
    if (suspension.isPresent()) {
      throw KeyRefusal.suspended("Nothing was written.", suspension.get());
    }
    if (!roll.maySign(signer.thumbprint())) {
      throw KeyRefusal.notEnrolled("Nothing was written.", signer.thumbprint());
    }
    return write(signer, drafts);
  }

  /** Enrols an official who is no judge. */
  public Entry enrol(SigningKey organizer, VerifyingKey official, String name)
      throws LedgerException {
    return enrol(organizer, official, name, Role.OFFICIAL);
  }

  /**
   * Enrols an official: from the next entry on, entries may be signed with this key.
   *
   * @param name the official's name, not blank
   * @param role what the official may do beside signing what happens at the station
   * @throws LedgerException {@code LEDGER-NOT-ORGANIZER} when the signer is not the organizer,
   *     {@code LEDGER-ENROLLED} when the key may sign already; else as {@link #append}
   */
  public synchronized Entry enrol(
      SigningKey organizer, VerifyingKey official, String name, Role role) throws LedgerException {
    if (name.isBlank()) {
      throw new IllegalArgumentException("An official has a name.");
    }
    KeyRefusal.unlessOrganizer(roll, organizer, name + " was not enrolled.");
    if (roll.maySign(official.thumbprint())) {
      throw KeyRefusal.enrolled(name);
    }
    return write(organizer, List.of(KeyNotice.enrolment(official, name, role))).get(0);
  }

  /**
   * Suspends an official: from the next entry on, nothing may be signed with this key, until it is
   * enrolled again. What it signed before stands.
   *
   * @param reason in the organizer's words, not blank
   * @throws LedgerException {@code LEDGER-NOT-ORGANIZER} when the signer is not the organizer,
   *     {@code LEDGER-SUSPENDED} or {@code LEDGER-NOT-ENROLLED} when the key may not sign anyhow;
   *     else as {@link #append}
   */
  public synchronized Entry suspend(SigningKey organizer, VerifyingKey official, String reason)
      throws LedgerException {
    return write(organizer, List.of(suspension(organizer, official, reason))).get(0);
  }

  /**
   * Suspends an official's key and enrols another of the same name and role, in one transaction.
   *
   * @return the suspension and the enrolment
   * @throws LedgerException as {@link #suspend} and {@link #enrol} do
   */
  public synchronized List<Entry> replace(
      SigningKey organizer, VerifyingKey old, VerifyingKey fresh, String reason)
      throws LedgerException {
    Draft suspension = suspension(organizer, old, reason);
    Enrolled official = roll.official(old.thumbprint()).orElseThrow();
    if (roll.maySign(fresh.thumbprint())) {
      throw KeyRefusal.enrolled(official.name());
    }
    Draft enrolment = KeyNotice.enrolment(fresh, official.name(), official.role());
    return write(organizer, List.of(suspension, enrolment));
  }

  private Draft suspension(SigningKey organizer, VerifyingKey official, String reason)
      throws LedgerException {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("A suspension has a reason.");
    }
    String what = "Nobody was suspended.";
    KeyRefusal.unlessOrganizer(roll, organizer, what);
    Optional<Suspension> before = roll.suspension(official.thumbprint());
    if (before.isPresent()) {
      throw KeyRefusal.suspended(what, before.get());
    }
    if (roll.official(official.thumbprint()).isEmpty()) {
      throw KeyRefusal.notEnrolled(what, official.thumbprint());
    }
    return KeyNotice.suspension(official, reason);
  }

  private List<Entry> write(SigningKey signer, List<Draft> drafts) throws LedgerException {
    requireUsable();
    List<Entry> entries = new ArrayList<>(drafts.size());
    Head before = head;
    Head last = head;
    for (Draft draft : drafts) {
      Entry entry = Entry.sign(signer, last, station, clock.instant(), seconds(), draft);
      last = new Head(entry.sequence(), entry.hash());
      entries.add(entry);
    }
    try {
      store.append(entries);
    } catch (SQLException failed) {
      LedgerException fault = StorageFault.of(file, "The entry was not confirmed.", failed);
      throw settle(before, last, entries, fault);
    }
    take(last, entries);
    return List.copyOf(entries);
  }

  private void take(Head last, List<Entry> entries) {
    head = last;
    entries.forEach(roll::take);
  }

  /**
   * An append that failed may have been written all the same. The file says which: the next entry
   * must follow what is there, and an enrolment that is there counts.
   */
  private LedgerException settle(
      Head before, Head last, List<Entry> entries, LedgerException fault) {
    try {
      Optional<Head> stored = store.head();
      if (stored.isPresent() && stored.get().equals(last)) {
        take(last, entries);
        return LedgerException.unconfirmed(entries, fault);
      }
      headKnown = stored.isPresent() && stored.get().equals(before);
    } catch (SQLException unreadable) {
      headKnown = false;
      fault.addSuppressed(unreadable);
    }
    return fault;
  }

  private void requireUsable() throws LedgerException {
    if (closed) {
      throw new LedgerException(
          "LEDGER-CLOSED", "Nothing was written.", "The ledger is closed.", "Open it again.");
    }
    if (!headKnown) {
      throw new LedgerException(
          "LEDGER-HEAD-UNKNOWN",
          "Nothing was written.",
          "After an earlier fault it is not known what the ledger's last entry is.",
          "Open the ledger again: that verifies it.");
    }
  }

  private BigDecimal seconds() {
    return BigDecimal.valueOf((nanos.getAsLong() - openedAt) / NANOS_A_MICRO, MICROSECONDS);
  }

  /**
   * Hands every entry, in order, to {@code reader}; entries appended meanwhile are left out.
   *
   * <p>Reads beside the writer and checks links and hashes; signatures were checked on opening.
   *
   * @throws LedgerException when the file cannot be read or was changed since it was opened
   */
  public void forEach(Consumer<? super Entry> reader) throws LedgerException {
    LedgerReading.read(file, head(), reader);
  }

  /** All entries, in order. Prefer {@link #forEach} where they need not be held at once. */
  public List<Entry> entries() throws LedgerException {
    List<Entry> entries = new ArrayList<>();
    forEach(entries::add);
    return entries;
  }

  /** The last entry that is known to be written. */
  public synchronized Head head() {
    return head;
  }

  /** The station whose chain this is. */
  public String station() {
    return station;
  }

  /** Thumbprint of the organizer's key, the root of trust. */
  public synchronized String organizer() {
    return roll.organizer().orElseThrow().thumbprint();
  }

  /** Every enrolment of an official, in its order; some may be suspended by now. */
  public synchronized List<Enrolled> officials() {
    return roll.officials();
  }

  /** The official who may sign with this key now. */
  public synchronized Optional<Enrolled> official(String thumbprint) {
    return roll.official(thumbprint);
  }

  /** The suspension that keeps this key from signing now. */
  public synchronized Optional<Suspension> suspension(String thumbprint) {
    return roll.suspension(thumbprint);
  }

  /** Closes the file and lets the next writer in. Every entry was durable before. */
  @Override
  public synchronized void close() throws LedgerException {
    if (closed) {
      return;
    }
    closed = true;
    try (lock;
        here) {
      store.close();
    } catch (SQLException failed) {
      throw StorageFault.of(file, "The ledger was not closed properly.", failed);
    }
  }
}
