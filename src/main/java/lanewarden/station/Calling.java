package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.roster.Competitor;
import lanewarden.rules.Division;

/** A competitor is called to the line: what that amounts to, as things stand. */
record Calling(Book book) {

  /** Whom to call, and why. */
  @FunctionalInterface
  interface Act {
    List<Fact> facts(Calling calling) throws StationException;
  }

  /**
   * The end of a decided check at the line, the opening, and the verdict where the rule decides
   * without a shot.
   *
   * @param grounds why, where the rule does not call for it; blank if none were given
   */
  List<Fact> of(String bibOrName, String grounds) throws StationException {
    requireOpen();
    Admission admission = book.admission();
    Competitor competitor = admission.find(bibOrName);
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(new OpenCheck(atLine.get()).closed());
    }
    Fact.CheckOpened opening = admission.open(competitor, grounds);
    facts.addAll(opened(opening, facts.size(), admission.division(competitor.division())));
    return facts;
  }

  private void requireOpen() throws StationException {
    new StopGate(book.standing()).requireClear();
    new InstrumentGate(book.standing()).requireOpen();
  }

  /** The opening, and the verdict where the rule decides without a shot. */
  private List<Fact> opened(Fact.CheckOpened opening, int before, Division division) {
    List<Fact> facts = new ArrayList<>(List.of(opening));
    Ruling.on(
            opening,
            book.head().sequence() + before + 1,
            division,
            book.ruleBook().sha256(),
            book.standing().phase())
        .ifPresent(facts::add);
    return facts;
  }

  /**
   * The competitor of a check in dispute comes again, with bow and arrow as they were stated last:
   * the end of a decided check at the line, and the opening of a check that stands beside.
   */
  List<Fact> recheck(long protest) throws StationException {
    requireOpen();
    Recheck recheck = Recheck.under(protest, book.standing());
    Division division = book.admission().division(recheck.division());
    if (!division.rule().checksAnything()) {
      throw StationException.misstep(
          "NOTHING-TO-CHECK",
          "No recheck was begun.",
          "Division " + division.code() + " has no limit now and asks nothing of bow or arrow.",
          "Rule on the protest by the check as it is.");
    }
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(new OpenCheck(atLine.get()).closed());
    }
    facts.addAll(opened(recheck.opening(), facts.size(), division));
    return facts;
  }

  /** On which grounds a competitor could be called; empty where none are needed or help. */
  Optional<Grounds> grounds(String bibOrName) throws StationException {
    Admission admission = book.admission();
    boolean closed =
        new StopGate(book.standing()).closed().isPresent()
            || new InstrumentGate(book.standing()).closed().isPresent();
    return closed ? Optional.empty() : admission.grounds(admission.find(bibOrName));
  }
}
