package lanewarden.station;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.LineStop;
import lanewarden.ledger.SigningKey;
import lanewarden.ledger.Suspension;
import lanewarden.roster.Competitor;
import lanewarden.roster.LateEntry;
import org.jspecify.annotations.Nullable;

/**
 * What concerns the event and not one competitor: its phases, the draws, the rule book in force.
 *
 * <p>Belongs to one {@link Station} and works under its lock; any thread may call.
 */
public final class Proceedings {
  private final Station station;
  private final EventFolder folder;
  private final Book book;
  private final Duty duty;
  private final Clock clock;

  Proceedings(Station station, EventFolder folder, Book book, Duty duty, Clock clock) {
    this.duty = duty;
    this.clock = clock;
    this.station = station;
    this.folder = folder;
    this.book = book;
  }

  /**
   * Proves that somebody is an official who may sign now; nothing is signed, and whoever is on duty
   * stays. Opening the key takes a good part of a second: call it off the screen's thread.
   *
   * @param passphrase is wiped
   * @throws StationException if the name or the passphrase is wrong, or the key is suspended
   */
  public void vouch(String name, char[] passphrase) throws StationException {
    SigningKey opened = folder.key(name, passphrase, clock);
    synchronized (station) {
      Optional<Suspension> suspension = book.people().suspension(opened);
      if (suspension.isPresent()) {
        throw StationException.stuck(
            People.trouble("The full screen was not left.", suspension.get()));
      }
    }
  }

  /**
   * Stops the line for safety, in the middle of a check too: no reading is taken, nobody is called
   * and no verdict is given until {@link #clearLine}. The check at the line stays, and no check is
   * put in question. While the line is stopped it says why, or says it anew.
   *
   * <p>What cannot be written now waits, before everything that comes after it, until it can.
   *
   * @param reason in the official's words; blank where there is no time to say it
   */
  public void stopLine(String reason) throws StationException {
    synchronized (station) {
      boolean stopped = book.standing().stop().isPresent();
      // Whoever stops a line that is stopped already has nothing to sign but why
      if (reason.isBlank() && stopped) {
        return;
      }
      requireNoBib(reason);
      Optional<String> why = reason.isBlank() ? Optional.empty() : Optional.of(Reason.of(reason));
      if (stopped) {
        station.sign(here -> List.of(new FrameFact.LineStopped(why.orElse(null))));
        return;
      }
      station.stir();
      duty.stop(why);
      // Everybody sees it before the disk answers
      station.tell();
      signStop();
      Optional<Trouble> waits = duty.stopWaits();
      if (waits.isPresent()) {
        throw StationException.stuck(waits.get());
      }
    }
  }

  /** Tries again to sign a stop that waits for it. Whoever owns the time calls it now and then. */
  void trySigningStop() {
    synchronized (station) {
      if (duty.stopWaits().isPresent()) {
        signStop();
      }
    }
  }

  private void signStop() {
    duty.flush();
    station.tell();
  }

  /** A bib that somebody scans while it is asked why would stand in the audit as the danger. */
  private void requireNoBib(String reason) throws StationException {
    Optional<Competitor> scanned = book.roster().bib(reason.strip());
    if (scanned.isPresent()) {
      throw StationException.misstep(
          "REASON-IS-BIB",
          "No reason was signed; the line stays stopped.",
          reason.strip() + " is the bib of " + scanned.get().name() + ".",
          "Say in words why the line is stopped, or go back.");
    }
  }

  /**
   * Says that the line is clear again, as the range officer found it; the check at the line goes on
   * where it was.
   *
   * @throws StationException if it is not stopped
   */
  public void clearLine() throws StationException {
    station.sign(
        book -> {
          Optional<LineStop> stop = book.standing().stop();
          if (stop.isEmpty()) {
            throw StationException.misstep(
                "NOT-STOPPED", "Nothing was cleared.", "The line is not stopped.", "Go on.");
          }
          return List.of(new FrameFact.LineCleared(stop.get().number()));
        });
  }

  /**
   * Begins a phase of the event. A check that is at the line keeps the phase in which it was
   * opened.
   *
   * @param phase its word or phrase, such as {@code during} or {@code during the event}
   * @param reason why; without one the event only goes on, never back
   */
  public void begin(String phase, String reason) throws StationException {
    station.sign(
        book -> {
          PhaseChange change = new PhaseChange(book.standing().phase());
          return List.of(change.to(PhaseChange.named(phase), reason));
        });
  }

  /**
   * Draws those of a division who are to be checked.
   *
   * @param seed the digits that were thrown before witnesses
   * @return the draw as it was signed
   */
  public Fact.DrawMade draw(String division, String seed) throws StationException {
    return (Fact.DrawMade) station.sign(book -> List.of(book.draw(division, seed))).get(0);
  }

  /** The draws that the rule book in force asks for and that were not made under it. */
  public List<DueDraw> dueDraws() {
    synchronized (station) {
      return book.dueDraws();
    }
  }

  /**
   * Puts somebody on the roster who entered late, in its file and in the ledger. The official on
   * duty signs the roster, and the report shows who was added and by whom.
   *
   * @param bib as it stands on the archer
   * @param name as it is to be written
   * @param division its code
   * @throws StationException if the bib is taken, the division is not in the rule book, or the file
   *     was changed by somebody else; then nothing was changed
   */
  public void addLate(String bib, String name, String division) throws StationException {
    synchronized (station) {
      new LateEntries(folder, book)
          .add(
              new LateEntry(bib.strip(), name.strip(), division.strip()),
              roster -> {
                List<Fact> unused = station.sign(here -> List.of(roster));
              });
    }
  }

  /** The codes of the divisions of the rule book in force. */
  public List<String> divisions() {
    synchronized (station) {
      return new LateEntries(folder, book).divisions();
    }
  }

  /**
   * Signs the head of another station's ledger, so that this ledger bears witness to it.
   *
   * @param other the other station's name
   * @param head as printed on a slip or report of it
   * @return the number of the entry
   * @throws StationException if the head has another form or is of this very station
   */
  public long witness(String other, String head) throws StationException {
    synchronized (station) {
      List<Fact> unused = station.sign(here -> List.of(here.witnessed(other, head)));
      return book.head().sequence();
    }
  }

  /**
   * Puts the rule book that now lies in the folder in force. The organizer signs it, whoever is on
   * duty. Verdicts that were given and the check at the line keep their rule. Opening the key takes
   * a good part of a second: call it off the screen's thread.
   *
   * @param keyFile where the organizer's key rests, or empty for its place in the folder
   * @param passphrase of the organizer's key; is wiped
   * @param reason in the organizer's words
   * @return what the organizer is to know of it, though it hindered nothing
   * @throws StationException if the key does not open, the rule book is faulty or the one in force,
   *     or a competitor's division is not in it
   */
  public Optional<Trouble> adoptRuleBook(Optional<Path> keyFile, char[] passphrase, String reason)
      throws StationException {
    SigningKey organizer = organizersKey().open(keyFile, passphrase);
    List<Trouble> told = new ArrayList<>();
    station.oversee(
        (here, notice) -> {
          Optional<Trouble> remark = here.adoptRuleBook(organizer, folder.ruleBook(), reason);
          remark.ifPresent(told::add);
          boolean settled = notice != null && notice.code().equals(RuleBookChange.SEEN);
          return remark.isPresent() || settled ? remark.orElse(null) : notice;
        });
    return told.stream().findFirst();
  }

  private OrganizersKeyFile organizersKey() {
    synchronized (station) {
      return new OrganizersKeyFile(folder, Optional.of(book.organizer()), clock);
    }
  }

  /** Who may sign here now: enrolled, not suspended, and with a key in the folder; by name. */
  public List<KeyOffice.Official> signers() throws StationException {
    List<String> here = folder.officials();
    synchronized (station) {
      return book.people().all().stream()
          .filter(one -> one.suspension().isEmpty() && here.contains(one.name()))
          .toList();
    }
  }

  /**
   * What awaits a set-up under the rule book in force, before anybody shoots.
   *
   * @param scatter standard deviation of the archer's arrows from one to the next; ft/s without a
   *     unit
   * @param only code of the one division that is asked about; blank for all
   * @throws StationException if what was typed cannot be read
   */
  public Outlook outlook(BroughtText typed, String scatter, String only) throws StationException {
    return Outlook.of(rulesInForce().wanted(only), typed, scatter);
  }

  /** The rule book in force. */
  public WrittenRules rulesInForce() {
    synchronized (station) {
      return WrittenRules.of(book.ruleBook());
    }
  }

  /** Something that the organizer decides while the line is open. */
  @FunctionalInterface
  interface Decision {
    /**
     * @param notice what the official was to know until now
     * @return what the official is to know from now on
     */
    @Nullable Trouble on(Book book, @Nullable Trouble notice) throws StationException;
  }

  /** Refuses what {@link #adoptRuleBook} would, whatever the passphrase; so it is asked first. */
  public void requireAdoptable(String reason) throws StationException {
    synchronized (station) {
      book.change().to(folder.ruleBook(), reason);
    }
  }
}
