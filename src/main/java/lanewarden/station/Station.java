package lanewarden.station;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.SpeedUnit;
import lanewarden.roster.Competitor;
import lanewarden.written.WrittenText;
import org.jspecify.annotations.Nullable;

/**
 * The check-in line: every use case of an official on duty.
 *
 * <p>Each change is appended to the ledger, and only what comes back from the ledger changes what
 * is shown; so a restart comes back exactly where the ledger ends, in the middle of a check too.
 *
 * <p>Any thread may call; calls run one after the other. Listeners are told under the same lock and
 * must return at once.
 */
public final class Station implements AutoCloseable {

  /** The longest reason kept, in characters. */
  public static final int LONGEST_REASON = 200;

  private final EventFolder folder;
  private final Book book;
  private final SentenceProfile profile;
  private final Instrument instrument;
  private final String program;
  private final TypedEntry typedEntry;
  private final Waiting waiting = new Waiting();
  private final List<Consumer<LineView>> listeners = new CopyOnWriteArrayList<>();
  private @Nullable SigningKey key;
  private Signal.@Nullable LinkChanged link;
  private Fact.@Nullable LineRefused refused;
  private @Nullable Trouble notice;

  private Station(
      EventFolder folder,
      Book book,
      SentenceProfile profile,
      Instrument instrument,
      String program,
      Clock clock) {
    this.folder = folder;
    this.book = book;
    this.profile = profile;
    this.instrument = instrument;
    this.program = program;
    this.typedEntry = new TypedEntry(profile.plausible(), clock);
  }

  /**
   * Opens the station of an event: verifies and folds its ledger, and listens to the instrument.
   *
   * @param instrument not yet started; owned and closed by the station
   * @param program name and version of the running program
   * @throws StationException if the ledger is not sound, is open elsewhere, or cannot be read
   */
  public static Station open(
      EventFolder folder,
      SentenceProfile profile,
      Instrument instrument,
      String program,
      Clock clock,
      LongSupplier nanos)
      throws StationException {
    Book book = Book.open(folder, clock, nanos);
    Station station = new Station(folder, book, profile, instrument, program, clock);
    try {
      instrument.start(station::hear);
    } catch (RuntimeException e) {
      book.close();
      throw e;
    }
    return station;
  }

  /** Asks to be told of every change, beginning with the state now. */
  public synchronized void listen(Consumer<LineView> listener) {
    listeners.add(listener);
    listener.accept(view());
  }

  /** The line at this moment. */
  public synchronized LineView view() {
    Optional<Trouble> stuck = waiting.trouble();
    return new LineView(
        book.event(),
        book.station(),
        key == null ? Optional.empty() : book.standing().official(),
        instrument.name(),
        link == null ? LineView.Link.LOST : LineView.Link.of(link.state()),
        link == null ? "The instrument has not been heard yet." : link.words(),
        book.check(),
        Optional.ofNullable(refused),
        book.progress(),
        book.head(),
        stuck.or(book::doubt).or(() -> Optional.ofNullable(notice)),
        waiting.size());
  }

  /** Competitors whom the typed bib or name may mean, the likeliest first. */
  public synchronized List<Competitor> search(String typed, int most) {
    return book.roster().search(typed, most);
  }

  /** The names of the officials who may sign in. */
  public List<String> officials() throws StationException {
    return folder.officials();
  }

  /**
   * An official takes over. Opening the key takes a good part of a second: call it off the screen's
   * thread.
   *
   * @param passphrase is wiped
   * @throws StationException if the name or the passphrase is wrong, or nothing can be written
   */
  public void signIn(String name, char[] passphrase) throws StationException {
    SigningKey opened = folder.key(name, passphrase);
    synchronized (this) {
      if (key != null) {
        signOut();
      }
      Book.Adoption adoption = book.adoption(folder);
      notice = adoption.notice().orElse(null);
      List<Fact> facts = new ArrayList<>();
      facts.add(new Fact.OfficialSignedIn(book.nameOf(opened)));
      Fact.StationOpened opening =
          new Fact.StationOpened(instrument.name(), profile.text(), program);
      if (!book.standing().opened().equals(Optional.of(opening))) {
        facts.add(opening);
      }
      adoption.roster().ifPresent(facts::add);
      book.append(opened, facts);
      key = opened;
      flush();
      tell();
    }
  }

  /** The official leaves; a check that runs stays where it is. */
  public synchronized void signOut() throws StationException {
    SigningKey leaving = ready();
    book.append(
        leaving, List.of(new Fact.OfficialSignedOut(book.standing().official().orElse(""))));
    key = null;
    tell();
  }

  /**
   * Calls a competitor by bib or name. A decided check at the line is closed by it.
   *
   * @throws StationException if nobody or several are meant, a check is still running, or the rule
   *     allows no further check
   */
  public synchronized void call(String bibOrName) throws StationException {
    SigningKey signer = ready();
    Admission admission = new Admission(book.standing(), book.roster());
    Competitor competitor = admission.find(bibOrName);
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(closing(atLine.get().check()));
    }
    facts.add(admission.open(competitor));
    book.settleDoubt();
    book.append(signer, facts);
    refused = null;
    notice = null;
    tell();
  }

  /**
   * Takes a reading typed by the official, marked as typed.
   *
   * @param text a speed; without a unit it is in the division's
   */
  public synchronized void type(String text) throws StationException {
    ready();
    SpeedUnit unit = running().division().rule().unit();
    hear(typedEntry.read(text, unit));
  }

  /**
   * Declares a reading of the check at the line void; a verdict that rested on it falls, and the
   * rule is asked anew.
   *
   * @param reading the sequence of its entry
   * @param reason in the official's words
   */
  public synchronized void declareVoid(long reading, String reason) throws StationException {
    SigningKey signer = ready();
    CheckView view = running();
    boolean stands = view.check().standing().contains(reading);
    if (!stands) {
      throw StationException.misstep(
          "NO-SUCH-READING",
          "Nothing was declared void.",
          "Reading " + reading + " is not one of this check's, or is void already.",
          "Choose a reading of the check at the line.");
    }
    book.append(signer, Taking.voided(view, reading, reasoned(reason)));
    tell();
  }

  /** Declares the last reading that stands void. */
  public synchronized void declareLastVoid(String reason) throws StationException {
    ready();
    Optional<Check.TakenShot> last = running().check().lastStanding();
    if (last.isEmpty()) {
      throw StationException.misstep(
          "NO-READING",
          "Nothing was declared void.",
          "The check at the line has no reading that stands.",
          "Wait for a reading first.");
    }
    declareVoid(last.get().sequence(), reason);
  }

  /** The competitor leaves the line after a verdict. */
  public synchronized void next() throws StationException {
    SigningKey signer = ready();
    book.append(signer, List.of(closing(running().check())));
    refused = null;
    tell();
  }

  /** Ends the check at the line without a verdict, for a reason. */
  public synchronized void endCheck(String reason) throws StationException {
    SigningKey signer = ready();
    Check check = running().check();
    String why = reasoned(reason);
    book.append(signer, List.of(new Fact.CheckClosed(check.number(), why)));
    refused = null;
    tell();
  }

  /** Closes the line and signs the official out. */
  public synchronized void closeLine() throws StationException {
    SigningKey signer = ready();
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(closing(atLine.get().check()));
    }
    facts.add(new Fact.OfficialSignedOut(book.standing().official().orElse("")));
    facts.add(new Fact.StationClosed());
    book.append(signer, facts);
    key = null;
    tell();
  }

  /** Tries again to write what waits, after a full disk was cleared. */
  public synchronized void retry() {
    book.settleDoubt();
    flush();
    tell();
  }

  /** Leaves the instrument and the ledger; what is signed stays as it is. */
  @Override
  public void close() throws StationException {
    instrument.close();
    synchronized (this) {
      book.close();
    }
  }

  private synchronized void hear(Signal signal) {
    if (signal instanceof Signal.LinkChanged changed) {
      link = changed;
    }
    waiting.add(signal, key != null);
    flush();
    tell();
  }

  /** Writes what waits, as far as it can be written; nothing that waits is lost. */
  private void flush() {
    SigningKey signer = key;
    if (signer != null) {
      waiting.write(
          signal -> {
            List<Fact> facts = Taking.of(signal, book.check(), book.head().sequence() + 1);
            book.append(signer, facts);
            note(facts);
          },
          heardOffDuty -> {
            List<Fact> facts = Taking.offDuty(heardOffDuty);
            book.append(signer, facts);
            note(facts);
          });
    }
  }

  /** Remembers a refused line for the screen, until a reading or the next competitor. */
  private void note(List<Fact> facts) {
    for (Fact fact : facts) {
      if (fact instanceof Fact.LineRefused line) {
        refused = line;
      } else if (fact instanceof Fact.ReadingTaken) {
        refused = null;
      }
    }
  }

  private void tell() {
    if (!listeners.isEmpty()) {
      LineView view = view();
      listeners.forEach(l -> l.accept(view));
    }
  }

  private SigningKey onDuty() throws StationException {
    if (key == null) {
      throw StationException.misstep(
          "NOBODY-ON-DUTY",
          "Nothing was done.",
          "No official is signed in, so nobody could sign it.",
          "Sign in first.");
    }
    return key;
  }

  /** On duty, and with everything written that was heard. */
  private SigningKey ready() throws StationException {
    SigningKey signer = onDuty();
    flush();
    Optional<Trouble> stuck = waiting.trouble();
    if (stuck.isPresent()) {
      throw StationException.stuck(stuck.get());
    }
    return signer;
  }

  private CheckView running() throws StationException {
    return book.check()
        .orElseThrow(
            () ->
                StationException.misstep(
                    "NOBODY-AT-THE-LINE",
                    "Nothing was done.",
                    "No competitor is at the line.",
                    "Call a competitor first."));
  }

  private static Fact closing(Check check) throws StationException {
    if (check.outcome().isEmpty()) {
      throw StationException.misstep(
          "CHECK-RUNNING",
          "The check of " + check.opened().bib() + " " + check.opened().name() + " goes on.",
          "It is not decided yet.",
          "Take the readings it lacks, or end it with a reason.");
    }
    return new Fact.CheckClosed(check.number(), null);
  }

  private static String reasoned(String reason) throws StationException {
    String plain = reason.strip();
    if (plain.isEmpty() || plain.length() > LONGEST_REASON) {
      throw StationException.misstep(
          "REASON-MISSING",
          "Nothing was done.",
          plain.isEmpty() ? "No reason was given." : "The reason is too long.",
          "Give the reason in at most " + LONGEST_REASON + " characters: it is signed with it.");
    }
    if (!WrittenText.isPlain(plain)) {
      throw StationException.misstep(
          "REASON-UNREADABLE",
          "Nothing was done.",
          "The reason holds characters that cannot be seen.",
          "Type it again in plain letters.");
    }
    return plain;
  }
}
