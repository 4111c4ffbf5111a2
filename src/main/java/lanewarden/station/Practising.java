package lanewarden.station;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewarden.bench.Comparison;
import lanewarden.bench.Practice;
import lanewarden.bench.PracticeNotes;
import lanewarden.bench.PracticeSetUp;
import lanewarden.bench.PracticeShot;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Docket;
import lanewarden.journal.Fact;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.jspecify.annotations.Nullable;

/**
 * A practice day at the station: set-ups are shot beside each other, and nobody is checked. Nobody
 * has to be on duty; only keeping it in the ledger is signed.
 *
 * <p>A reading goes to the practice or to the line, never to both: practice begins only while
 * nobody is at the line and no verification runs, and while it listens neither can begin.
 *
 * <p>Belongs to one {@link Station} and works under its lock; any thread may call.
 */
public final class Practising {
  private static final String BESIDE = "practice";

  private final Station station;
  private final EventFolder folder;
  private final Book book;
  private final Duty duty;
  private final TypedEntry typedEntry;
  private final Clock clock;
  private PracticeNotes notes = PracticeNotes.none();
  private long changes;
  private boolean listening;
  private @Nullable PracticeSetUp setUp;
  private @Nullable Practice practice;
  private @Nullable PracticeFile file;
  private PracticeView.@Nullable News news;
  private @Nullable Trouble trouble;

  Practising(
      Station station,
      EventFolder folder,
      Book book,
      Duty duty,
      TypedEntry typedEntry,
      Clock clock) {
    this.station = station;
    this.folder = folder;
    this.book = book;
    this.duty = duty;
    this.typedEntry = typedEntry;
    this.clock = clock;
  }

  /** The practice at this moment. */
  PracticeView view() {
    return new PracticeView(
        changes,
        Optional.ofNullable(setUp),
        listening,
        Optional.ofNullable(news),
        Optional.ofNullable(file).map(PracticeFile::path),
        Optional.ofNullable(practice),
        Optional.ofNullable(trouble));
  }

  /** What the shots so far show beside each other, against the rule book in force. */
  public Optional<Comparison> comparison() {
    synchronized (station) {
      return Optional.ofNullable(practice)
          .map(shot -> Comparison.of(shot, Optional.of(book.ruleBook())));
    }
  }

  /**
   * Goes on with a practice file. The file itself stays as it is: what is shot on top of it is
   * written to another.
   *
   * @throws StationException if it cannot be read or is faulty, with every fault; then the practice
   *     is as before
   */
  public void open(Path from) throws StationException {
    Practice read = PracticeDay.read(from);
    synchronized (station) {
      try {
        PracticeNotes opened = PracticeNotes.of(read);
        begin(opened, opened.completed(BESIDE, opened.last().orElseThrow()), read);
      } catch (WrittenRefused e) {
        throw StationException.of(e);
      }
    }
  }

  /** Begins an empty one; what was shot before stays in its file. */
  public void beginAnew() {
    synchronized (station) {
      begin(PracticeNotes.none(), null, null);
    }
  }

  private void begin(PracticeNotes opened, @Nullable PracticeSetUp first, @Nullable Practice read) {
    notes = opened;
    setUp = first;
    practice = read;
    file = null;
    news = null;
    trouble = null;
    listening = false;
    changed();
  }

  private void changed() {
    changes++;
    station.tell();
  }

  /**
   * Says which bow and arrow is shot from now on.
   *
   * @throws StationException if a figure cannot be read or contradicts one stated before; then the
   *     one before is shot on
   */
  public void shoot(PracticeSetUpText typed) throws StationException {
    shootNext(typed.read());
  }

  /**
   * Goes on with a bow and arrow that were shot before.
   *
   * @throws StationException if they were not
   */
  public void shootAgain(String bow, String arrow) throws StationException {
    shootNext(PracticeSetUp.known(bow, arrow));
  }

  private void shootNext(PracticeSetUp stated) throws StationException {
    synchronized (station) {
      try {
        setUp = notes.completed(BESIDE, stated);
        changed();
      } catch (WrittenRefused e) {
        WrittenFault first = e.faults().get(0);
        throw PracticeSetUpText.refused(first.expected(), first.found(), first.mend());
      }
    }
  }

  /**
   * Lets the instrument's readings go to the practice.
   *
   * @throws StationException if somebody is at the line, a verification runs, or no set-up is
   *     chosen
   */
  public void listen() throws StationException {
    synchronized (station) {
      requireSetUp();
      if (book.check().isPresent()) {
        throw busy(
            "A competitor is at the line.", "End the check or call \"next\" at the line first.");
      }
      if (book.standing().verification().isPresent()) {
        throw busy("The instrument is being verified.", "Finish the verification first.");
      }
      listening = true;
      changed();
    }
  }

  private static StationException busy(String why, String remedy) {
    return StationException.misstep(
        "LINE-BUSY", "The practice does not listen to the instrument.", why, remedy);
  }

  private PracticeSetUp requireSetUp() throws StationException {
    if (setUp == null) {
      throw StationException.misstep(
          "PRACTICE-NO-SET-UP",
          "Nothing was taken.",
          "Nobody said which bow and arrow is shot.",
          "State or choose a set-up first.");
    }
    return setUp;
  }

  /** Gives the instrument's readings back to the line. */
  public void rest() {
    synchronized (station) {
      if (listening) {
        listening = false;
        changed();
      }
    }
  }

  /**
   * Refuses what needs the instrument for itself while the practice listens to it.
   *
   * @throws StationException if it does
   */
  void requireResting() throws StationException {
    if (listening) {
      throw StationException.misstep(
          "PRACTICE-LISTENS",
          "Nothing was begun.",
          "A practice has the instrument: its readings would not come to the line.",
          "Leave the practice first, and see that nobody there is drawing.");
    }
  }

  /** Takes what came from the instrument, if it listens; then the line does not get it. */
  boolean takes(Signal signal) {
    if (!listening || signal instanceof Signal.LinkChanged) {
      return false;
    }
    take(signal, Objects.requireNonNull(setUp));
    return true;
  }

  /**
   * Takes a reading typed off the instrument.
   *
   * @param text a speed; without a unit it is in that of the first shot, else in ft/s
   * @throws StationException if it is none, no set-up is chosen, or the line is not clear
   */
  public void type(String text) throws StationException {
    synchronized (station) {
      duty.requireClear(book);
      PracticeSetUp shot = requireSetUp();
      Signal signal =
          typedEntry.read(
              text, practice == null ? SpeedUnit.FEET_PER_SECOND : practice.series().get(0).unit());
      if (signal instanceof Signal.Refused refused) {
        throw StationException.misstep(
            "PRACTICE-READING",
            "No shot was taken.",
            refused.refusal().words(),
            "Type it again as the display shows it.");
      }
      take(signal, shot);
    }
  }

  private void take(Signal signal, PracticeSetUp shot) {
    if (signal instanceof Signal.Heard heard) {
      put(notes.with(shot, heard.reading().speed()));
      news = new PracticeView.News(true, heard.reading().speed().toString());
    } else if (signal instanceof Signal.Refused refused) {
      news = new PracticeView.News(false, refused.refusal().words());
    }
    changed();
  }

  /**
   * Takes what somebody says of a shot being a misread.
   *
   * @param line of the practice
   */
  public void mark(int line, PracticeShot.Word word) {
    synchronized (station) {
      put(notes.marked(line, word));
      changed();
    }
  }

  /** What is on the screen stands, also where the disk does not take it; the next shot tries on. */
  private void put(PracticeNotes more) {
    PracticeFile to = file == null ? PracticeFile.fresh(folder.path()) : file;
    try {
      Practice shot = more.practice(to.path().toString());
      notes = more;
      practice = shot;
      file = to;
      to.write(shot);
      trouble = null;
    } catch (WrittenRefused e) {
      throw new IllegalStateException("a shot that fits makes no practice file", e);
    } catch (IOException e) {
      trouble = Trouble.of(e);
    }
  }

  /**
   * Writes the practice to a file that is not there yet, in the form in which it can be opened.
   *
   * @throws StationException if there is such a file, the disk refuses, or nothing was shot
   */
  public void save(Path to) throws StationException {
    Practice shot;
    synchronized (station) {
      shot = requireShots();
    }
    PracticeFile.copy(shot, to);
  }

  private Practice requireShots() throws StationException {
    if (practice == null) {
      throw StationException.misstep(
          "PRACTICE-EMPTY", "Nothing was done.", "Nothing was shot yet.", "Take a shot first.");
    }
    return practice;
  }

  /**
   * Keeps the whole practice in the event's ledger, signed by whoever is on duty.
   *
   * @param title what it is called
   * @return the number of the entry
   */
  public long keep(String title) throws StationException {
    synchronized (station) {
      Fact kept = PracticeDay.kept(requireShots(), title);
      List<Fact> unused = station.sign(here -> List.of(kept));
      return book.head().sequence();
    }
  }

  /**
   * The same, signed by an official who comes to the table for it. Opening the key takes a good
   * part of a second.
   *
   * @param passphrase is wiped
   */
  public long keep(String official, char[] passphrase, String title) throws StationException {
    SigningKey key = folder.key(official, passphrase, clock);
    synchronized (station) {
      Fact kept = PracticeDay.kept(requireShots(), title);
      Docket unused = station.signed(key, (here, signer) -> List.of(kept));
      // Who comes while nobody is on duty signs out behind it
      return book.head().sequence() - (duty.isOn() ? 0 : 1);
    }
  }
}
