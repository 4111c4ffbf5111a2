package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.roster.Competitor;

/** A competitor is called to the line: what that amounts to, as things stand. */
record Calling(Book book) {

  /**
   * The end of a decided check at the line, the opening, and the verdict where the rule decides
   * without a shot.
   *
   * @param grounds why, where the rule does not call for it; blank if none were given
   */
  List<Fact> of(String bibOrName, String grounds) throws StationException {
    new InstrumentGate(book.standing()).requireOpen();
    Admission admission = book.admission();
    Competitor competitor = admission.find(bibOrName);
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(new OpenCheck(atLine.get()).closed());
    }
    Fact.CheckOpened opening = admission.open(competitor, grounds);
    facts.add(opening);
    Ruling.on(
            opening,
            book.head().sequence() + facts.size(),
            admission.division(competitor.division()),
            book.ruleBook().sha256(),
            book.standing().phase())
        .ifPresent(facts::add);
    return facts;
  }

  /** On which grounds a competitor could be called; empty where none are needed or help. */
  Optional<Grounds> grounds(String bibOrName) throws StationException {
    Admission admission = book.admission();
    return new InstrumentGate(book.standing()).closed().isPresent()
        ? Optional.empty()
        : admission.grounds(admission.find(bibOrName));
  }
}
