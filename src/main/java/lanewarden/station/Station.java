package lanewarden.station;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Docket;
import lanewarden.journal.Fact;
import lanewarden.ledger.SigningKey;
import lanewarden.roster.Competitor;
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
  private final StationPapers papers;
  private final Instrument instrument;
  private final String program;
  private final TypedEntry typedEntry;
  private final Intake intake;
  private final Duty duty;
  private final Clock clock;
  private final Proving proving;
  private final Practising practising;
  private final Hearing hearing;
  private final Officiating officiating;
  private final Proceedings proceedings;
  private final Wire wire;
  private final CheckRecords records;
  private final List<Consumer<LineView>> listeners = new CopyOnWriteArrayList<>();
  private @Nullable Trouble notice;

  private Station(
      EventFolder folder,
      Book book,
      StationPapers papers,
      Instrument instrument,
      String program,
      Clock clock,
      Stillness still) {
    this.clock = clock;
    this.folder = folder;
    this.book = book;
    this.papers = papers;
    this.instrument = instrument;
    this.program = program;
    this.intake = new Intake(book, papers);
    this.duty = new Duty(intake, still, papers.settings().signOutAfter());
    this.typedEntry = new TypedEntry(papers.profile().plausible(), clock);
    this.wire = new Wire(papers.profile());
    this.officiating = new Officiating(this);
    this.proceedings = new Proceedings(this, folder, book, duty, clock);
    this.records = CheckRecords.at(this, book);
    this.proving = new Proving(this, papers.settings().verification(), typedEntry);
    this.practising = new Practising(this, folder, book, duty, typedEntry, clock);
    this.hearing = new Hearing(this, wire, practising, intake, duty, book);
  }

  /**
   * Opens the station of an event: verifies and folds its ledger, and listens to the instrument.
   *
   * @param instrument not yet started; owned and closed by the station
   * @param program name and version of the running program
   * @throws StationException if the ledger is not sound, is open elsewhere, or cannot be read
   */
  public static Station open(
      EventFolder folder, Instrument instrument, String program, Clock clock, LongSupplier nanos)
      throws StationException {
    StationPapers papers = folder.papers();
    Book book = Book.open(folder, clock, nanos);
    Station station =
        new Station(folder, book, papers, instrument, program, clock, new Stillness(clock, nanos));
    try {
      instrument.start(station.hearing::overhear);
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

  /** Tells a listener no more. */
  public synchronized void unlisten(Consumer<LineView> listener) {
    listeners.remove(listener);
  }

  /** The line at this moment. */
  public synchronized LineView view() {
    return LineView.of(book, intake, duty, proving, practising, instrument, papers, notice);
  }

  /** Competitors whom the typed bib or name may mean, the likeliest first. */
  public synchronized List<Competitor> search(String typed, int most) {
    return book.roster().search(typed, most);
  }

  /** The names of the officials who may sign in. */
  public List<String> officials() throws StationException {
    return folder.officials();
  }

  /** Refuses what {@link #signIn} would, whatever the passphrase; so it is asked first. */
  public void requireOfficial(String name) throws StationException {
    folder.requireOfficial(name);
  }

  /**
   * An official takes over. Opening the key takes a good part of a second: call it off the screen's
   * thread.
   *
   * @param passphrase is wiped
   * @throws StationException if the name or the passphrase is wrong, or nothing can be written
   */
  public void signIn(String name, char[] passphrase) throws StationException {
    SigningKey opened = folder.key(name, passphrase, clock);
    synchronized (this) {
      if (duty.isOn()) {
        signOut();
      }
      Arrival arrival = new Arrival(book, book.adoption(folder));
      notice = arrival.notice();
      book.append(opened, arrival.of(opened, papers.opening(instrument.name(), program), proving));
      duty.begin(opened);
      duty.flush();
      tell();
    }
  }

  /** The official leaves; a check that runs stays where it is. */
  public synchronized void signOut() throws StationException {
    book.append(duty.ready(), new Leaving(book).signedOut());
    duty.end();
    tell();
  }

  /**
   * Calls a competitor whom the rule calls for, by bib or name. A decided check at the line is
   * closed by it. A rule that decides without a shot gives its verdict at once.
   *
   * @throws StationException if nobody or several are meant, a check is still running, or the rule
   *     allows no further check
   */
  public void call(String bibOrName) throws StationException {
    call(bibOrName, "");
  }

  /**
   * Calls a competitor for whom the rule does not call: who has a pass, was not drawn, or must be
   * named by a judge.
   *
   * @param grounds signed with the call: the word of what made the pass lapse, or a judge's words
   * @throws StationException as the plain call does, and if the grounds are not what it takes
   */
  public void call(String bibOrName, String grounds) throws StationException {
    called(calling -> calling.of(bibOrName, grounds));
  }

  /**
   * Calls the competitor of a check in dispute to a recheck, which stands beside that check.
   *
   * @param protest its number
   * @throws StationException if a check is running, or the protest is settled or not known
   */
  public void recheck(long protest) throws StationException {
    called(calling -> calling.recheck(protest));
  }

  private synchronized void called(Calling.Act act) throws StationException {
    practising.requireResting();
    sign(
        book -> {
          List<Fact> facts = act.facts(new Calling(book));
          book.settleDoubt();
          notice = null;
          return facts;
        });
  }

  /**
   * On which grounds a competitor could be called; empty where none are needed or none would help.
   */
  public synchronized Optional<Grounds> grounds(String bibOrName) throws StationException {
    return new Calling(book).grounds(bibOrName);
  }

  /**
   * Takes a reading typed by the official, marked as typed; while the instrument is verified, a
   * shot of that.
   *
   * @param text a speed; without a unit it is in the division's, or the reference's
   */
  public synchronized void type(String text) throws StationException {
    signer();
    hearing.hear(typedEntry.read(text, proving.unitToType(book)));
  }

  /** Protests, rulings and corrections, signed by whoever is on duty. */
  public Protests protests() {
    return new Protests(this::signed, typedEntry);
  }

  private synchronized Docket signed(Protests.Deed deed) throws StationException {
    String signer = duty.ready().thumbprint();
    sign(here -> deed.facts(here, signer));
    return book.standing().docket();
  }

  /**
   * The same, signed by somebody who comes to the table for it, as a judge or a second person does.
   * Whoever is on duty stays. Opening the key takes a good part of a second.
   *
   * @param passphrase is wiped
   * @throws StationException if the name or the passphrase is wrong
   */
  public Protests protests(String name, char[] passphrase) throws StationException {
    SigningKey visitor = folder.key(name, passphrase, clock);
    return new Protests(deed -> signed(visitor, deed), typedEntry);
  }

  synchronized Docket signed(SigningKey visitor, Protests.Deed deed) throws StationException {
    lookForTheOfficial();
    intake.clearAfter(new Visit(book, duty, intake).sign(visitor, deed));
    tell();
    return book.standing().docket();
  }

  /**
   * Where the organizer enrols, suspends and replaces officials while the line is open, with this
   * randomness for keys and seals. Whoever is on duty with a key that was suspended is signed out;
   * a check that runs stays where it is.
   */
  public KeyOffice keyOffice(SecureRandom random) {
    return new KeyOffice(
        new OrganizersKeyFile(folder, Optional.of(book.organizer()), clock),
        random,
        this::administer,
        () -> book.people().all());
  }

  private synchronized void administer(KeyOffice.Act act) throws StationException {
    duty.flush();
    intake.requireWritten();
    try {
      act.into(book);
    } finally {
      // Also where the ledger was written and only a file could not be moved
      notice = duty.endIfSuspended(book.people()).orElse(notice);
      tell();
    }
  }

  /** The checks that were made, to be looked into. */
  public CheckRecords records() {
    return records;
  }

  /** What is done to know that the instrument is good. */
  public Proving proving() {
    return proving;
  }

  /** Set-ups beside each other while nobody is checked. */
  public Practising practising() {
    return practising;
  }

  /** What is done with the check at the line. */
  public Officiating officiating() {
    return officiating;
  }

  /** What concerns the event and not one competitor. */
  public Proceedings proceedings() {
    return proceedings;
  }

  /** The competitor leaves the line after a verdict. */
  public void next() throws StationException {
    sign(book -> List.of(new OpenCheck(book.atLine()).closed()));
  }

  /** Ends the check at the line without a verdict, for a reason. */
  public void endCheck(String reason) throws StationException {
    sign(book -> new OpenCheck(book.atLine()).ended(reason));
  }

  /**
   * Signs the official out who did nothing for longer than the settings allow; a check that runs
   * stays where it is. Whoever owns the time calls it now and then.
   */
  public synchronized void lookForTheOfficial() {
    if (!duty.isForgotten()) {
      return;
    }
    try {
      notice = new Leaving(book).forgotten(duty, papers.settings());
    } catch (StationException e) {
      notice = e.trouble();
    }
    tell();
  }

  /** Whoever is on duty shows to be at the table, without signing anything. */
  public synchronized void stir() {
    lookForTheOfficial();
    if (duty.isOn()) {
      duty.stir();
      tell();
    }
  }

  private SigningKey signer() throws StationException {
    lookForTheOfficial();
    return duty.ready();
  }

  /** Signs what somebody on duty does, and returns it. */
  synchronized List<Fact> sign(Book.Deed deed) throws StationException {
    SigningKey signer = signer();
    List<Fact> facts = deed.facts(book);
    book.append(signer, facts);
    intake.clearAfter(facts);
    tell();
    return facts;
  }

  /** Signs what the organizer decides, whoever is on duty, once all that was heard is written. */
  synchronized void oversee(Proceedings.Decision decision) throws StationException {
    duty.flush();
    intake.requireWritten();
    notice = decision.on(book, notice);
    tell();
  }

  /**
   * Closes the line and signs the official out.
   *
   * @param reason why without a verification of the instrument that is due; blank where none is
   */
  public synchronized void closeLine(String reason) throws StationException {
    SigningKey signer = signer();
    Optional<String> signed = proving.reasonToClose(book, reason);
    book.append(signer, new Leaving(book).closed(signed));
    duty.end();
    tell();
  }

  /** Tries again to write what waits, after a full disk was cleared. */
  public synchronized void retry() {
    book.settleDoubt();
    duty.flush();
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

  /** What came from the instrument of late, and whether its profile fits it. */
  public WireView wire() {
    return wire.view(instrument.name());
  }

  /** Tells everybody who asked, under this lock. */
  void tell() {
    if (!listeners.isEmpty()) {
      LineView view = view();
      listeners.forEach(l -> l.accept(view));
    }
  }
}
