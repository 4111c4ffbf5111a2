package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Role;
import lanewarden.ledger.SealKey;
import lanewarden.ledger.SigningKey;

/**
 * Where the organizer enrols, suspends and replaces officials, and makes the key that seals
 * reports: at an open line, or while no station runs.
 *
 * <p>The ledger is written before a key file changes its place: an act that is cut short in between
 * leaves a suspended key where it was, which opens nothing, and can be done again.
 */
public final class KeyOffice {
  private static final String NEXT = ".next";

  /** Where the ledger is that an act is signed into. */
  @FunctionalInterface
  interface Desk {
    void sign(Act act) throws StationException;
  }

  /** Says who was enrolled, as the ledger is. */
  @FunctionalInterface
  interface Enrolments {
    List<Official> all() throws StationException;
  }

  /** Something that is signed into a ledger. */
  @FunctionalInterface
  interface Act {
    void into(Book book) throws StationException;
  }

  private final OrganizersKeyFile organizers;
  private final EventFolder folder;
  private final Clock clock;
  private final SecureRandom random;
  private final Desk desk;
  private final Enrolments enrolments;

  /**
   * While no station runs: each act opens the ledger and closes it again. To list the officials the
   * ledger is only read, also beside a station that runs.
   *
   * @param folder the event's
   * @param here where time and randomness come from
   */
  public KeyOffice(EventFolder folder, Surroundings here) {
    this(
        new OrganizersKeyFile(folder, Optional.empty(), here.clock()),
        here.random(),
        act -> {
          try (Book book = Book.open(folder, here.clock(), here.nanos())) {
            act.into(book);
          }
        },
        () -> People.in(folder.ledger()));
  }

  KeyOffice(OrganizersKeyFile organizers, SecureRandom random, Desk desk, Enrolments enrolments) {
    this.organizers = organizers;
    this.folder = organizers.folder();
    this.clock = organizers.clock();
    this.random = random;
    this.desk = desk;
    this.enrolments = enrolments;
  }

  /** The organizer's key, opened for one act. */
  public static final class Organizer {
    private final SigningKey key;

    private Organizer(SigningKey key) {
      this.key = key;
    }
  }

  /**
   * An official as the ledger has one.
   *
   * @param name as enrolled
   * @param thumbprint of the key
   * @param judge whether the official may rule on protests
   * @param suspension if the key may not sign
   */
  public record Official(
      String name, String thumbprint, boolean judge, Optional<Suspended> suspension) {}

  /**
   * That a key may not sign.
   *
   * @param entry of the ledger that says so
   * @param reason as the organizer gave it
   */
  public record Suspended(long entry, String reason) {

    /** In English words. */
    public String inWords() {
      return "suspended by entry " + entry + ": " + reason;
    }
  }

  /**
   * Opens the organizer's key.
   *
   * @param keyFile where it rests, or empty for its place in the folder
   * @param passphrase is wiped
   */
  public Organizer organizer(Optional<Path> keyFile, char[] passphrase) throws StationException {
    return new Organizer(organizers.open(keyFile, passphrase));
  }

  /** Every key that was ever enrolled, in the order of enrolment, and how it stands. Only reads. */
  public List<Official> officials() throws StationException {
    return enrolments.all();
  }

  /**
   * Enrols a new official with a key of their own.
   *
   * @param passphrase that seals the key; is wiped
   */
  public void enrol(Organizer organizer, String name, char[] passphrase) throws StationException {
    enrol(organizer, name, Role.OFFICIAL, passphrase);
  }

  /** The same for an official who may rule on protests. */
  public void enrolJudge(Organizer organizer, String name, char[] passphrase)
      throws StationException {
    enrol(organizer, name, Role.JUDGE, passphrase);
  }

  private void enrol(Organizer organizer, String name, Role role, char[] passphrase)
      throws StationException {
    String what = "Nobody was enrolled.";
    Path file = folder.keys().of(name);
    try {
      desk.sign(
          book -> {
            boolean reserved = file.equals(folder.organizerKey());
            KeyCabinet.requireName(
                name.strip(),
                reserved || Files.exists(file) || book.people().standing(name).isPresent(),
                what);
            SigningKey key = sealed(file, name.strip(), passphrase, what);
            try {
              book.write(
                  ledger ->
                      List.of(ledger.enrol(organizer.key, key.publicKey(), name.strip(), role)));
            } catch (StationException refused) {
              // A key that nobody enrolled would only stand in the way of the next attempt
              throw discarding(file, refused);
            }
          });
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  /**
   * Suspends an official: nothing more may be signed with the key. What was signed stands.
   *
   * @param reason in the organizer's words; is signed with it
   */
  public void suspend(Organizer organizer, String name, String reason) throws StationException {
    desk.sign(book -> folder.keys().setAside(book.suspend(organizer.key, name, reason)));
  }

  /** Lets a suspended official sign again, with the same key. */
  public void readmit(Organizer organizer, String name) throws StationException {
    desk.sign(
        book -> {
          Enrolled once = book.people().suspended(name, "Nobody was readmitted.").official();
          book.write(
              ledger -> List.of(ledger.enrol(organizer.key, once.key(), once.name(), once.role())));
          folder.keys().bringBack(once.name(), once.thumbprint());
        });
  }

  /**
   * Suspends an official's key and enrols another for the same official, in one step: for a key or
   * a passphrase that was lost.
   *
   * @param passphrase that seals the new key; is wiped
   * @param reason in the organizer's words; is signed with it
   */
  public void replace(Organizer organizer, String name, char[] passphrase, String reason)
      throws StationException {
    try {
      desk.sign(book -> replace(book, organizer, name, passphrase, reason));
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  private void replace(
      Book book, Organizer organizer, String name, char[] passphrase, String reason)
      throws StationException {
    String what = "No key was replaced.";
    String why = Reason.of(reason);
    Enrolled old = book.people().required(name, what);
    Path file = folder.keys().of(old.name());
    Path next = file.resolveSibling(file.getFileName() + NEXT);
    try {
      Files.deleteIfExists(next);
    } catch (IOException e) {
      throw StationException.of(e);
    }
    SigningKey fresh = sealed(next, old.name(), passphrase, what);
    try {
      book.write(ledger -> ledger.replace(organizer.key, old.key(), fresh.publicKey(), why));
    } catch (StationException refused) {
      throw discarding(next, refused);
    }
    long suspension = book.head().sequence() - 1;
    if (Files.exists(file)) {
      KeyCabinet.move(
          file, file.resolveSibling(file.getFileName() + KeyCabinet.ASIDE + suspension));
    }
    KeyCabinet.move(next, file);
  }

  /**
   * Makes the key that seals the event's reports, as the making of an event does; the organizer
   * signs whose it is. For an event of an older version, or in place of a key that was lost: then
   * move the old file away first. Takes a second or more.
   *
   * @param keyFile where the organizer's key rests, or empty for its place in the folder
   * @param passphrase of the organizer's key, which seals the new one too; is wiped
   * @return where the new key rests
   * @throws StationException {@code KEY-EXISTS} if there is one
   */
  public Path makeReportSeal(Optional<Path> keyFile, char[] passphrase) throws StationException {
    char[] again = passphrase.clone();
    try {
      SigningKey organizer = organizers.open(keyFile, passphrase);
      // Made before the ledger is asked for: the line need not wait for it
      Fact adopted =
          ReportSeal.make(
              folder, folder.settings().station(), "the organizer", again, clock, random);
      try {
        desk.sign(book -> book.append(organizer, List.of(adopted)));
      } catch (StationException refused) {
        // A key that no entry states would only mislead
        throw discarding(folder.reportSeal(), refused);
      }
      return folder.reportSeal();
    } catch (LedgerException e) {
      throw StationException.of(e);
    } finally {
      Arrays.fill(again, '\0');
    }
  }

  /**
   * Seals an official's key under another passphrase. Needs no ledger, so a station may run.
   *
   * @param passphrase the one that was good until now; is wiped
   * @param fresh is wiped
   */
  public void changePassphrase(String name, char[] passphrase, char[] fresh)
      throws StationException {
    reseal(folder.key(name, passphrase, clock), folder.keys().of(name), name, fresh);
  }

  /**
   * The same for the organizer's key, and for the key that seals reports, which the organizer's
   * passphrase opens too. The seal goes first: cut short in between, the same act ends the work.
   *
   * @param keyFile where it rests, or empty for its place in the folder
   */
  public void changeOrganizers(Optional<Path> keyFile, char[] passphrase, char[] fresh)
      throws StationException {
    char[] forSeal = passphrase.clone();
    Path file = organizers.at(keyFile);
    try {
      KeyCabinet.requireLong("the organizer", fresh, "No passphrase was changed.");
      SigningKey key = organizers.open(keyFile, passphrase);
      resealReports(forSeal, fresh);
      reseal(key, file, "the organizer", fresh);
    } finally {
      Arrays.fill(forSeal, '\0');
      Arrays.fill(fresh, '\0');
    }
  }

  private void resealReports(char[] passphrase, char[] fresh) throws StationException {
    Path file = folder.reportSeal();
    if (Files.exists(file)) {
      try {
        KeyFile.reseal(file, seal(file, passphrase, fresh), fresh.clone(), random);
      } catch (LedgerException e) {
        throw StationException.of(e);
      }
    }
  }

  /** An act that was cut short may have left the seal under the new passphrase already. */
  private static SealKey seal(Path file, char[] passphrase, char[] fresh) throws LedgerException {
    try {
      return KeyFile.openSeal(file, passphrase.clone());
    } catch (LedgerException notTheOld) {
      try {
        return KeyFile.openSeal(file, fresh.clone());
      } catch (LedgerException notTheNew) {
        notTheOld.addSuppressed(notTheNew);
        throw notTheOld;
      }
    }
  }

  private void reseal(SigningKey key, Path file, String name, char[] fresh)
      throws StationException {
    try {
      KeyCabinet.requireLong(name, fresh, "No passphrase was changed.");
      KeyFile.reseal(file, key, fresh, random);
    } catch (LedgerException e) {
      throw StationException.of(e);
    } finally {
      Arrays.fill(fresh, '\0');
    }
  }

  private SigningKey sealed(Path file, String name, char[] passphrase, String what)
      throws StationException {
    KeyCabinet.requireLong(name, passphrase, what);
    try {
      SigningKey key = SigningKey.generate(random);
      KeyFile.seal(file, key, name, passphrase, random);
      return key;
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  private static StationException discarding(Path file, StationException refused) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException stays) {
      refused.addSuppressed(stays);
    }
    return refused;
  }
}
