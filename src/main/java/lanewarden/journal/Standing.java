package lanewarden.journal;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.ledger.Entry;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.Phase;
import lanewarden.rules.Rule;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenRefused;
import org.jspecify.annotations.Nullable;

/**
 * How things stand: everything that screens and reports show, folded from the ledger's entries.
 *
 * <p>Owned by one thread; what it hands out is immutable. The same entries give the same standing.
 */
public final class Standing {

  /**
   * A draw with its entry.
   *
   * @param sequence of the entry that made it
   * @param ruleBook hash of the rule book in force when it was made
   */
  public record Draw(long sequence, String ruleBook, Fact.DrawMade fact) {}

  private final Map<String, RuleBook> ruleBooks = new LinkedHashMap<>();
  private final List<Draw> draws = new ArrayList<>();
  private final List<Fact.LineRefused> strayLines = new ArrayList<>();
  private final InstrumentStanding instrument = new InstrumentStanding();
  private final LineStops stops = new LineStops();
  private final DocketStanding docket = new DocketStanding(this::check, this::rule);
  private final Accounts accounts = new Accounts(docket::counting);
  private Phase phase = Phase.BEFORE;
  private @Nullable RuleBook ruleBook;
  private Fact.@Nullable RosterAdopted roster;
  private Fact.@Nullable StationOpened opened;
  private Fact.@Nullable LinkChanged link;
  private @Nullable String official;
  private @Nullable Long current;

  /**
   * Takes the next entry.
   *
   * @return what it says; empty for an entry of the ledger's own
   * @throws FactRefused if it cannot be read, or speaks of a check or reading that is not there
   */
  public Optional<Fact> apply(Entry entry) throws FactRefused {
    Optional<Fact> fact = FactJson.read(entry);
    if (fact.isEmpty()) {
      docket.note(entry);
    } else {
      try {
        fold(entry.sequence(), entry.at(), entry.signer(), fact.get());
        docket.note(
            entry.signer(), fact.get(), Belonging.checks(entry.sequence(), fact.get(), this));
      } catch (WrittenRefused | IllegalArgumentException e) {
        throw new FactRefused(entry.sequence(), entry.kind(), e);
      }
    }
    return fact;
  }

  private void fold(long sequence, Instant at, String signer, Fact fact) throws WrittenRefused {
    if (fact instanceof Fact.RuleBookAdopted adopted) {
      adopt(adopted);
    } else if (fact instanceof Fact.RosterAdopted adopted) {
      roster = adopted;
    } else if (fact instanceof Fact.StationOpened openedNow) {
      opened = openedNow;
      instrument.opened(sequence, openedNow);
    } else if (fact instanceof Fact.StationClosed) {
      opened = null;
      official = null;
    } else if (fact instanceof Fact.OfficialSignedIn in) {
      official = in.name();
    } else if (fact instanceof FrameFact.OfficialSignedOut) {
      official = null;
    } else if (fact instanceof FrameFact.PracticeKept kept) {
      kept.requireOwnHash();
    } else if (fact instanceof Fact.LinkChanged changed) {
      link = changed;
    } else if (fact instanceof Fact.PhaseBegan began) {
      phase = began.phase();
    } else if (fact instanceof Fact.DrawMade draw) {
      draws.add(new Draw(sequence, inForce(), draw));
    } else if (fact instanceof Fact.LineHeld held) {
      held.checks().forEach(this::check);
      instrument.hold(new Hold(sequence, at, signer, held, Optional.empty()));
      question(held);
    } else if (fact instanceof Fact.HoldLifted lifted) {
      question(instrument.lift(lifted).fact());
    } else if (fact instanceof ProtestFact disputed) {
      docket.fold(sequence, at, signer, disputed).ifPresent(accounts::put);
    } else if (!instrument.fold(sequence, at, signer, fact)
        && !stops.fold(sequence, at, signer, fact)) {
      foldCheck(sequence, at, signer, fact);
    }
  }

  private void question(Fact.LineHeld held) {
    held.checks().forEach(n -> accounts.put(check(n).question(instrument.questions(n))));
  }

  private void foldCheck(long sequence, Instant at, String signer, Fact fact) {
    if (fact instanceof Fact.CheckOpened openedNow) {
      docket.opened(sequence, openedNow);
      accounts.put(Check.opened(sequence, openedNow, at, signer, inForce(), phase));
      current = sequence;
    } else if (fact instanceof SetUpStated stated) {
      accounts.put(noted(check(stated.check()).state(stated)));
    } else if (fact instanceof Fact.ConditionTicked ticked) {
      accounts.put(check(ticked.check()).tick(ticked));
    } else if (fact instanceof Fact.ReadingTaken reading) {
      accounts.put(noted(check(reading.check()).take(sequence, reading)));
    } else if (fact instanceof Fact.ReadingVoided voided) {
      accounts.put(noted(withReading(voided.check(), voided.reading()).declareVoid(voided)));
    } else if (fact instanceof Fact.ReadingFlagged flagged) {
      accounts.put(withReading(flagged.check(), flagged.reading()).flag(flagged));
    } else if (fact instanceof Fact.ReadingKept kept) {
      accounts.put(noted(withReading(kept.check(), kept.reading()).keep(kept)));
    } else if (fact instanceof Fact.VerdictGiven given) {
      accounts.put(
          check(given.check()).decide(new Check.GivenVerdict(sequence, at, signer, given)));
    } else if (fact instanceof Fact.CheckClosed closed) {
      accounts.put(left(check(closed.check())).close(closed));
      current = null;
    } else if (fact instanceof Fact.LineRefused line) {
      if (line.check() == null) {
        strayLines.add(line);
      } else {
        accounts.put(check(line.check()).refuse(line));
      }
    }
  }

  /** The hash of the rule book in force; blank before the first. */
  private String inForce() {
    return ruleBook == null ? "" : ruleBook.sha256();
  }

  private void adopt(Fact.RuleBookAdopted adopted) throws WrittenRefused {
    RuleBook book = RuleBook.read(adopted.file(), adopted.text().getBytes(StandardCharsets.UTF_8));
    if (!book.sha256().equals(adopted.sha256())) {
      throw new IllegalArgumentException(
          "the rule book's text has the hash " + book.sha256() + ", not " + adopted.sha256());
    }
    ruleBook = book;
    ruleBooks.put(book.sha256(), book);
  }

  private Check withReading(long number, long reading) {
    Check check = check(number);
    if (check.shots().stream().noneMatch(s -> s.sequence() == reading)) {
      throw new IllegalArgumentException("check " + number + " has no reading " + reading);
    }
    return check;
  }

  private Check check(long number) {
    return accounts.check(number);
  }

  /** The check, noted as over if its rule, as far as it is known, makes it so by what was read. */
  private Check noted(Check check) {
    return rule(check).map(check::notedBy).orElse(check);
  }

  private Check left(Check check) {
    return rule(check).map(check::leftBy).orElse(check);
  }

  private Optional<Rule> rule(Check check) {
    return ruleBook(check.ruleBook())
        .flatMap(book -> book.division(check.opened().division()))
        .map(Division::rule);
  }

  /** The rule book in force. */
  public Optional<RuleBook> ruleBook() {
    return Optional.ofNullable(ruleBook);
  }

  /** A rule book that is or was in force, by its hash. */
  public Optional<RuleBook> ruleBook(String sha256) {
    return Optional.ofNullable(ruleBooks.get(sha256));
  }

  /** Every rule book that was in force, in order. */
  public List<RuleBook> ruleBooks() {
    return List.copyOf(ruleBooks.values());
  }

  /** The phase of the event. */
  public Phase phase() {
    return phase;
  }

  /** The draw of a division that was made last, if one was. */
  public Optional<Draw> draw(String division) {
    return draws.stream()
        .filter(draw -> draw.fact().division().equals(division))
        .reduce((earlier, later) -> later);
  }

  /** Every draw that was made, in order. */
  public List<Draw> draws() {
    return List.copyOf(draws);
  }

  /**
   * The bibs of a division in the order of the roster in force: whom a draw is made from. Empty
   * where no roster is in force that can be read.
   */
  public Optional<List<String>> pool(String division) {
    Fact.RosterAdopted adopted = roster;
    if (adopted == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          Roster.signed(adopted.file(), adopted.text()).competitors().stream()
              .filter(competitor -> competitor.division().equals(division))
              .map(Competitor::bib)
              .toList());
    } catch (WrittenRefused unreadable) {
      return Optional.empty();
    }
  }

  /** The competitors, as adopted last. */
  public Optional<Fact.RosterAdopted> roster() {
    return Optional.ofNullable(roster);
  }

  /** How the line was opened, while it is open. */
  public Optional<Fact.StationOpened> opened() {
    return Optional.ofNullable(opened);
  }

  /** The name of the official who is signed in. */
  public Optional<String> official() {
    return Optional.ofNullable(official);
  }

  /** Where the instrument stood when an entry was written, if that was said. */
  public Optional<Place> place(long entry) {
    return instrument.place(entry);
  }

  /** The last word on the link to the instrument. */
  public Optional<Fact.LinkChanged> link() {
    return Optional.ofNullable(link);
  }

  /** The check at the line, decided or not, until it is closed. */
  public Optional<Check> current() {
    return Optional.ofNullable(current).map(this::check);
  }

  /** The check that an entry opened, if one did. */
  public Optional<Check> find(long number) {
    return accounts.find(number);
  }

  /** Every check, in the order opened. */
  public List<Check> checks() {
    return accounts.all();
  }

  /** The checks of one competitor, rechecks under a protest among them, in the order opened. */
  public List<Check> checksOf(String bib) {
    return accounts.of(bib);
  }

  /** What counts of a competitor's checks: no rechecks, and where a judge ruled, what stands. */
  public PastChecks past(String bib) {
    return accounts.past(bib, Long.MAX_VALUE);
  }

  /** The same of the checks that the competitor had before this one was opened. */
  public PastChecks pastBefore(Check check) {
    return accounts.past(check.opened().bib(), check.number());
  }

  /** The check whose outcome counts for this one: itself, unless a judge ruled otherwise. */
  public Check counting(Check check) {
    return docket.counting(check);
  }

  /** Every protest and every correction. */
  public Docket docket() {
    return docket.docket();
  }

  /**
   * What speaks against a protest, a ruling, a correction or a confirmation, were it signed now;
   * empty where nothing does.
   *
   * @param signer thumbprint of the key
   * @throws IllegalArgumentException if there is no such protest or correction
   */
  public Optional<Objection> objection(ProtestFact fact, String signer) {
    return docket.objection(fact, signer);
  }

  /** The check as it would count with a correction. */
  public Check corrected(Correction correction) {
    return correction.appliedTo(check(correction.fact().check()), this::rule);
  }

  /** How many competitors have an outcome at all. */
  public int competitorsDecided() {
    return accounts.decided();
  }

  /** How many competitors have this as the outcome of their last decided check. */
  public int competitorsWith(Outcome outcome) {
    return accounts.with(outcome);
  }

  /** Lines refused while no check was running. */
  public List<Fact.LineRefused> strayLines() {
    return List.copyOf(strayLines);
  }

  /** When the instrument is to be verified. */
  public Fact.VerificationPlanned verificationPlan() {
    return instrument.plan();
  }

  /** Every verification of the instrument, in the order begun. */
  public List<InstrumentVerification> verifications() {
    return instrument.verifications();
  }

  /** The verification that runs. */
  public Optional<InstrumentVerification> verification() {
    return instrument.running();
  }

  /** The last verification that ended within its limits. */
  public Optional<InstrumentVerification> goodVerification() {
    return instrument.good();
  }

  /** Every hold, in order. */
  public List<Hold> holds() {
    return instrument.holds();
  }

  /** The hold that stands; where several do, the last. */
  public Optional<Hold> hold() {
    return instrument.holds().stream().filter(Hold::stands).reduce((earlier, later) -> later);
  }

  /** The stop for safety that stands. */
  public Optional<LineStop> stop() {
    return stops.standing();
  }

  /** Every stop for safety, in order. */
  public List<LineStop> stops() {
    return stops.all();
  }

  /** The verification that must come before the next competitor is called, if one must. */
  public Optional<Occasion> verificationDue() {
    return instrument.due(accounts.each());
  }

  /** How many competitors may be called before a verification is due; empty for no such limit. */
  public OptionalInt callsLeft() {
    return instrument.callsLeft(accounts.each());
  }

  /** Whether a verification must come before the line closes. */
  public boolean verificationDueAtEnd() {
    return instrument.dueAtEnd(accounts.each());
  }

  /** What came to an outcome by shots since the last good verification: a hold questions it. */
  public List<Long> checksSinceGood() {
    return instrument.sinceGood(accounts.each());
  }

  /** Those whose last check is in question: they are to be checked again. */
  public List<Check> toBeCheckedAgain() {
    return accounts.inQuestion();
  }
}
