package lanewarden.ledger;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a check of a whole ledger file found: every fault, and who and what the ledger is about.
 *
 * <p>Reading needs no writer's lock and works beside a station that is appending; it sees the
 * entries that were there when it began. A sound ledger proves that whoever held the enrolled keys
 * signed these entries in this order; it does not prove that nothing was cut off its end (that is
 * what printed heads are for), nor that {@link #organizer()} is the right one (compare it with the
 * thumbprint the organizer printed). Immutable.
 */
public final class Verification {
  private static final int MOST_FAULTS_SHOWN = 3;

  private final Chain chain;
  private final List<LedgerFault> faults;

  Verification(Chain chain) {
    this.chain = chain;
    this.faults = chain.faults();
  }

  /**
   * Verifies a ledger file, with all cores.
   *
   * @throws LedgerException when the file cannot be read as a ledger at all
   */
  public static Verification of(Path file) throws LedgerException {
    return of(file, List.of(), examined -> {});
  }

  /**
   * Verifies a ledger file, also against heads printed earlier, and hands over its entries.
   *
   * @param printed heads from slips or reports; what was cut or exchanged since then is found
   * @param reader gets every readable entry in order, on the caller's thread, with the faults found
   *     in it so far; a stranger's signature may be renamed to {@code SIGNED_BEFORE_ENROLMENT}
   *     later, but an entry that is sound here stays so
   * @throws LedgerException when the file cannot be read as a ledger at all
   */
  public static Verification of(
      Path file, Collection<PrintedHead> printed, Consumer<? super Examined> reader)
      throws LedgerException {
    try (LedgerFile opened = LedgerFile.open(file, "The ledger " + file + " was not verified.");
        TableRows rows = new TableRows(opened)) {
      return new Verifier(rows, new Heads(printed), reader).verify();
    }
  }

  /** How many rows were met, faulty ones included. */
  public long entries() {
    return chain.rows();
  }

  /** The last row met; nothing in an empty ledger. */
  public Optional<Head> head() {
    return chain.head();
  }

  /** The station whose chain this is, as the first readable entry says. */
  public Optional<String> station() {
    return chain.station();
  }

  /** Thumbprint of the organizer's key, the root of trust; nothing when the opening is faulty. */
  public Optional<String> organizer() {
    return chain.roll().organizer().map(VerifyingKey::thumbprint);
  }

  /** Every sound enrolment of an official, in its order; some may be suspended by now. */
  public List<Enrolled> officials() {
    return chain.roll().officials();
  }

  /** The officials who may sign now, in the order of their first enrolment. */
  public List<Enrolled> signers() {
    return officials().stream()
        .map(Enrolled::thumbprint)
        .distinct()
        .flatMap(thumbprint -> roll().official(thumbprint).stream())
        .toList();
  }

  /** The officials whose key was suspended, each time in its order; some may sign again by now. */
  public List<Suspension> suspensions() {
    return chain.roll().suspensions();
  }

  /** The suspension that keeps this key from signing now. */
  public Optional<Suspension> suspension(String thumbprint) {
    return roll().suspension(thumbprint);
  }

  /** Everything that is wrong, in the order of the rows. */
  public List<LedgerFault> faults() {
    return faults;
  }

  /** Whether nothing is wrong. */
  public boolean sound() {
    return faults.isEmpty();
  }

  /**
   * Refuses a ledger that is not sound.
   *
   * @param what what is not done with it
   * @throws LedgerException {@code LEDGER-UNSOUND}, with the first faults
   */
  public void requireSound(String what) throws LedgerException {
    if (sound()) {
      return;
    }
    StringBuilder why =
        new StringBuilder("Verification found ")
            .append(faults.size())
            .append(faults.size() == 1 ? " fault:" : " faults, first:");
    faults.stream().limit(MOST_FAULTS_SHOWN).forEach(fault -> why.append(' ').append(fault));
    throw new LedgerException(
        "LEDGER-UNSOUND",
        what,
        why.toString(),
        "Keep this file as it is, for evidence; verify it to see all faults, and go on with the"
            + " latest sound copy or a new event folder.");
  }

  Roll roll() {
    return chain.roll();
  }
}
