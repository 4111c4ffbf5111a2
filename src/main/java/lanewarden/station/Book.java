package lanewarden.station;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.journal.FactRefused;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;
import lanewarden.ledger.Draft;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Head;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.SigningKey;
import lanewarden.ledger.Suspension;
import lanewarden.quantity.Percent;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.jspecify.annotations.Nullable;

/** The ledger of a station with what it amounts to: the only way facts are written and read. */
final class Book implements AutoCloseable {
  private final Ledger ledger;
  private final ClockWatch clocks;
  private final Standing standing;
  private Roster roster;
  private @Nullable Trouble doubt;
  private @Nullable Trouble remark;

  private Book(Ledger ledger, Standing standing, Roster roster, ClockWatch clocks) {
    this.clocks = clocks;
    this.ledger = ledger;
    this.standing = standing;
    this.roster = roster;
  }

  /** What an official does, as things stand. */
  @FunctionalInterface
  interface Deed {
    List<Fact> facts(Book book) throws StationException;
  }

  /** Verifies, opens and folds the ledger of an event. */
  static Book open(EventFolder folder, Clock clock, LongSupplier nanos) throws StationException {
    try {
      Ledger ledger = Ledger.open(folder.ledger(), clock, nanos);
      try {
        return fold(ledger, new ClockWatch(clock, nanos));
      } catch (LedgerException
          | FactRefused
          | WrittenRefused
          | StationException
          | RuntimeException e) {
        closeBeside(ledger, e);
        throw e;
      }
    } catch (LedgerException | FactRefused | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  private static Book fold(Ledger ledger, ClockWatch clocks)
      throws LedgerException, FactRefused, WrittenRefused, StationException {
    Standing standing = new Standing();
    for (Entry entry : ledger.entries()) {
      standing.apply(entry);
    }
    return new Book(ledger, standing, adopted(standing), clocks);
  }

  private static void closeBeside(Ledger ledger, Exception first) {
    try {
      ledger.close();
    } catch (LedgerException also) {
      first.addSuppressed(also);
    }
  }

  private static Roster adopted(Standing standing) throws StationException, WrittenRefused {
    Optional<Fact.RosterAdopted> roster = standing.roster();
    if (roster.isEmpty() || standing.ruleBook().isEmpty()) {
      throw StationException.misstep(
          "EVENT-UNFINISHED",
          "The line was not opened.",
          "The ledger has no rule book or no roster: the making of the event was cut short.",
          "Make the event again in another folder.");
    }
    return read(roster.get());
  }

  private static Roster read(Fact.RosterAdopted fact) throws WrittenRefused {
    return Roster.signed(fact.file(), fact.text());
  }

  /**
   * Signs, writes and folds; on return all of it is in the ledger.
   *
   * <p>A step of the computer's clock since the last time is signed in front of it.
   *
   * <p>Where the disk wrote without confirming, what was written counts: it is folded, and {@link
   * #doubt} says so. Writing it again would double it.
   *
   * @throws StationException if nothing was written
   */
  void append(SigningKey signer, List<Fact> facts) throws StationException {
    Optional<FrameFact.ClockStepped> step = clocks.look();
    List<Draft> drafts = Stream.concat(step.stream(), facts.stream()).map(FactJson::draft).toList();
    write(ledger -> ledger.append(signer, drafts));
    clocks.written();
    if (step.isPresent() && doubt == null) {
      doubt = ClockWatch.trouble(step.get());
    }
  }

  /** What is written into the ledger. */
  @FunctionalInterface
  interface Writing {
    List<Entry> into(Ledger ledger) throws LedgerException;
  }

  /** Writes and folds, as {@link #append} does. */
  void write(Writing writing) throws StationException {
    try {
      writing.into(ledger).forEach(this::fold);
    } catch (LedgerException e) {
      if (e.standing().isEmpty()) {
        throw StationException.of(e);
      }
      e.standing().forEach(this::fold);
      doubt = Trouble.of(e);
    }
  }

  private void fold(Entry entry) {
    try {
      Optional<Fact> fact = standing.apply(entry);
      if (fact.isPresent() && fact.get() instanceof Fact.RosterAdopted adopted) {
        roster = read(adopted);
      }
    } catch (FactRefused | WrittenRefused e) {
      throw new IllegalStateException("a fact was signed that cannot be read back", e);
    }
  }

  /**
   * What was written without the disk's confirmation, or after a step of the clock, until an
   * official went on all the same.
   */
  Optional<Trouble> doubt() {
    return Optional.ofNullable(doubt);
  }

  /** The official has seen it and goes on. */
  void settleDoubt() {
    doubt = null;
  }

  /**
   * What changed in the files since they were adopted.
   *
   * @param roster a changed roster to adopt
   * @param notice what the official must know
   */
  record Adoption(Optional<Fact> roster, Optional<Trouble> notice) {}

  /** Compares the files of the folder with what the ledger holds. */
  Adoption adoption(EventFolder folder) {
    // A rule book may have come into force while nobody was on duty to be told of it
    @Nullable Trouble notice = remark;
    remark = null;
    Optional<Fact> changed = Optional.empty();
    try {
      Roster now = folder.roster();
      if (!now.sha256().equals(roster.sha256())) {
        refuseStrangers(now);
        notice = new RosterChange(roster, now).notice();
        changed = Optional.of(new Fact.RosterAdopted(EventFolder.ROSTER, now.sha256(), now.text()));
      }
      if (!folder.ruleBook().sha256().equals(ruleBook().sha256())) {
        notice =
            new Trouble(
                "The rule book in the folder is not the one in force.",
                EventFolder.RULE_BOOK + " was changed after the event was made.",
                "The rule book that was adopted goes on governing. Put its text back, or have the"
                    + " organizer put this one in force with a reason: at the screens in the rule"
                    + " studio, while nobody is on duty, in a terminal with adopt.",
                RuleBookChange.SEEN,
                Trouble.Kind.USAGE);
      }
    } catch (StationException e) {
      notice = e.trouble();
    }
    return new Adoption(changed, Optional.ofNullable(notice));
  }

  private void refuseStrangers(Roster now) throws StationException {
    List<WrittenFault> faults =
        now.faultsAgainst(
            new LinkedHashSet<>(ruleBook().divisions().stream().map(Division::code).toList()));
    if (!faults.isEmpty()) {
      throw StationException.of(new WrittenRefused(faults.get(0).file(), faults));
    }
  }

  /** The check at the line with its rule. */
  Optional<CheckView> check() {
    return standing.current().map(this::view);
  }

  /** The check at the line, which must be there. */
  CheckView atLine() throws StationException {
    return check()
        .orElseThrow(
            () ->
                StationException.misstep(
                    "NOBODY-AT-THE-LINE",
                    "Nothing was done.",
                    "No competitor is at the line.",
                    "Call a competitor first."));
  }

  /** A check with its rule. */
  CheckView view(Check check) {
    return CheckView.of(standing, check);
  }

  /** The division whose rule governs a check. */
  Division division(Check check) {
    return view(check).division();
  }

  /** Who may be called, as things stand. */
  Admission admission() {
    return new Admission(standing, roster);
  }

  /** The draw of a division, as it is to be signed. */
  Fact.DrawMade draw(String division, String seed) throws StationException {
    return new Drawing(admission().division(division), standing.pool(division).orElseGet(List::of))
        .made(standing.draw(division), ruleBook().sha256(), seed, dueDraws());
  }

  /** The draws that the rule book in force asks for and that were not made under it. */
  List<DueDraw> dueDraws() {
    List<DueDraw> due = new ArrayList<>();
    for (Division division : ruleBook().divisions()) {
      Percent share = division.coverage().share();
      boolean drawn =
          standing
              .draw(division.code())
              .filter(draw -> draw.ruleBook().equals(ruleBook().sha256()))
              .isPresent();
      if (share != null && !drawn) {
        int pool = standing.pool(division.code()).map(List::size).orElse(0);
        due.add(new DueDraw(division.code(), share.toString(), pool));
      }
    }
    return due;
  }

  /**
   * The head of another station's ledger, as it is to be signed.
   *
   * @param station the other station's name
   * @param head as printed on a slip or report of it
   */
  Fact witnessed(String station, String head) throws StationException {
    String printed = LedgerInspection.head(head, "Nothing was signed.").toString();
    if (station.isBlank() || station.strip().equals(station())) {
      throw StationException.misstep(
          "WITNESS-SELF",
          "Nothing was signed.",
          "No other station is named; this one is " + station() + ".",
          "Name the station whose slip it is, as it stands there.");
    }
    return new FrameFact.HeadWitnessed(station.strip(), printed);
  }

  /** What another rule book would change, as things stand. */
  RuleBookChange change() {
    return new RuleBookChange(ruleBook(), roster);
  }

  /**
   * Signs another rule book with the organizer's key, and nobody else's.
   *
   * @return what there is to remark on it
   */
  Optional<Trouble> adoptRuleBook(SigningKey organizer, RuleBook now, String reason)
      throws StationException {
    if (!organizer.thumbprint().equals(ledger.organizer())) {
      throw OrganizersKeyFile.notOrganizers("No rule book was put in force.");
    }
    RuleBookChange change = change();
    append(organizer, List.of(change.to(now, reason)));
    remark = change.remark(now).orElse(null);
    return Optional.ofNullable(remark);
  }

  /** Thumbprint of the organizer's key, on which the ledger rests. */
  String organizer() {
    return ledger.organizer();
  }

  /** Suspends an official with the organizer's key. */
  Suspension suspend(SigningKey organizer, String name, String reason) throws StationException {
    String why = Reason.of(reason);
    Enrolled official = people().required(name, "Nobody was suspended.");
    write(ledger -> List.of(ledger.suspend(organizer, official.key(), why)));
    return ledger.suspension(official.thumbprint()).orElseThrow();
  }

  LineView.Progress progress() {
    int within = standing.competitorsWith(Outcome.WITHIN);
    return new LineView.Progress(
        within, standing.competitorsDecided() - within, roster.competitors().size());
  }

  /** Who may sign, and who might once. */
  People people() {
    return new People(ledger);
  }

  /** The enrolled name of the key's owner, who may sign. */
  String nameOf(SigningKey key) throws StationException {
    people().requireNotSuspended(key);
    return ledger
        .official(key.thumbprint())
        .map(Enrolled::name)
        .orElseThrow(
            () ->
                StationException.misstep(
                    "NOT-ENROLLED",
                    "Nobody was signed in.",
                    "This key is not enrolled in this event's ledger.",
                    "Use a key that was made for this event."));
  }

  RuleBook ruleBook() {
    return standing.ruleBook().orElseThrow();
  }

  String event() {
    return ruleBook().event();
  }

  String station() {
    return ledger.station();
  }

  Head head() {
    return ledger.head();
  }

  Standing standing() {
    return standing;
  }

  Roster roster() {
    return roster;
  }

  @Override
  public void close() throws StationException {
    try {
      ledger.close();
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }
}
