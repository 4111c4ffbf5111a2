package lanewarden.station;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;

/** Who may be called to the line, and for which attempt. */
final class Admission {

  /** How many names a message lists. */
  private static final int LISTED = 5;

  private final Standing standing;
  private final Roster roster;

  Admission(Standing standing, Roster roster) {
    this.standing = standing;
    this.roster = roster;
  }

  /** The only competitor that the typed bib or name can mean. */
  Competitor find(String typed) throws StationException {
    Optional<Competitor> bib = roster.bib(typed);
    if (bib.isPresent()) {
      return bib.get();
    }
    List<Competitor> meant = roster.search(typed, LISTED + 1);
    if (meant.size() == 1) {
      return meant.get(0);
    }
    if (meant.isEmpty()) {
      throw StationException.misstep(
          "NO-SUCH-COMPETITOR",
          "Nobody was called.",
          "No bib or name on the roster starts with \"" + typed.strip() + "\".",
          "Check the bib with the archer; a late entry must be put on the roster first.");
    }
    throw StationException.misstep(
        "SEVERAL-COMPETITORS",
        "Nobody was called.",
        "\"" + typed.strip() + "\" may mean " + listed(meant) + ".",
        "Type the bib, or more of the name.");
  }

  private static String listed(List<Competitor> meant) {
    return meant.stream()
        .limit(LISTED)
        .map(c -> c.bib() + " " + c.name())
        .collect(Collectors.joining(", ", "", meant.size() > LISTED ? " and others" : ""));
  }

  /** The opening of the competitor's next check, if the rule allows one. */
  Fact.CheckOpened open(Competitor competitor) throws StationException {
    Division division = division(competitor.division());
    List<Check> earlier = standing.checksOf(competitor.bib());
    if (!earlier.isEmpty()
        && earlier.get(earlier.size() - 1).outcome().equals(Optional.of(Outcome.WITHIN))) {
      throw StationException.misstep(
          "ALREADY-WITHIN",
          competitor.bib() + " " + competitor.name() + " was not called.",
          "Check " + earlier.get(earlier.size() - 1).number() + " already ended within.",
          "Check the bib; if it is right, the archer may go.");
    }
    if (fails(competitor.bib()) > division.rule().aftermath().rechecks()) {
      throw StationException.misstep(
          "NO-RECHECK-LEFT",
          competitor.bib() + " " + competitor.name() + " was not called.",
          "The division allows "
              + division.rule().aftermath().rechecks()
              + " re-checks after a fail, and all are used.",
          "Send the archer to a judge.");
    }
    return new Fact.CheckOpened(
        competitor.bib(),
        competitor.name(),
        competitor.division(),
        earlier.size() + 1,
        competitor.arrowMass(),
        competitor.drawWeight());
  }

  /** How many checks the rule still allows the competitor if this one fails, or since it did. */
  int rechecksLeft(Check check, Division division) {
    long failsBefore =
        standing.checksOf(check.opened().bib()).stream()
            .filter(c -> c.number() != check.number())
            .filter(Check::usesRecheck)
            .count();
    return (int) Math.max(0, division.rule().aftermath().rechecks() - failsBefore);
  }

  private int fails(String bib) {
    return (int) standing.checksOf(bib).stream().filter(Check::usesRecheck).count();
  }

  private Division division(String code) throws StationException {
    Optional<Division> division = standing.ruleBook().flatMap((RuleBook b) -> b.division(code));
    if (division.isEmpty()) {
      throw StationException.misstep(
          "NO-SUCH-DIVISION",
          "Nobody was called.",
          "The rule book in force has no division " + code + ".",
          "Correct the roster, or have the organizer correct the rule book.");
    }
    return division.get();
  }
}
