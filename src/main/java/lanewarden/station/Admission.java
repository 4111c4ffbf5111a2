package lanewarden.station;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.journal.Fact;
import lanewarden.journal.Obstacle;
import lanewarden.journal.PastChecks;
import lanewarden.journal.Standing;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.Lapse;
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
          Trouble.NO_SUCH_COMPETITOR,
          "Nobody was called.",
          "No bib or name on the roster starts with \"" + typed.strip() + "\".",
          "Check the bib with the archer; who enters late is put on the roster first.");
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

  /**
   * The opening of the competitor's next check.
   *
   * @param grounds why, where the rule does not call for it; blank if none were given
   * @throws StationException if something stands against it that does not give way to the grounds
   */
  Fact.CheckOpened open(Competitor competitor, String grounds) throws StationException {
    Division division = division(competitor.division());
    PastChecks past = past(competitor.bib());
    String signed = grounds.isBlank() ? "" : Reason.of(grounds);
    Optional<Obstacle> obstacle = obstacle(competitor, division, past);
    if (obstacle.isPresent() && !obstacle.get().givesWayTo(signed, division.rule())) {
      throw new Turned(competitor, division, past).away(obstacle.get());
    }
    requireWords(signed);
    if (signed.isEmpty() && past.passLapsedByClass(division)) {
      signed = Lapse.ANOTHER_CLASS.word();
    }
    return new Fact.CheckOpened(
        competitor.bib(),
        competitor.name(),
        competitor.division(),
        past.all().size() + 1,
        competitor.arrowMass(),
        competitor.drawWeight(),
        competitor.certifiedDrawWeight(),
        competitor.drawLength(),
        competitor.braceHeight(),
        signed.isEmpty() ? null : signed,
        null);
  }

  /** A bib that was scanned into the wrong field is no reason to call somebody. */
  private void requireWords(String grounds) throws StationException {
    if (!grounds.isEmpty()
        && (roster.bib(grounds).isPresent()
            || grounds.codePoints().noneMatch(Character::isLetter))) {
      throw StationException.misstep(
          "GROUNDS-NO-WORDS",
          "Nobody was called.",
          "\"" + grounds + "\" says nothing about why.",
          "Give the grounds in words: they are signed with the call.");
    }
  }

  /** The grounds on which the competitor could be called; empty where none are needed or help. */
  Optional<Grounds> grounds(Competitor competitor) throws StationException {
    Division division = division(competitor.division());
    Optional<Obstacle> obstacle = obstacle(competitor, division, past(competitor.bib()));
    boolean anyWords = obstacle.filter(o -> o.givesWayTo("x", division.rule())).isPresent();
    List<String> lapses =
        obstacle.filter(Obstacle.PASS_STANDS::equals).isPresent()
            ? Turned.lapses(division)
            : List.of();
    return anyWords || !lapses.isEmpty()
        ? Optional.of(new Grounds(competitor.bib(), competitor.name(), lapses))
        : Optional.empty();
  }

  private Optional<Obstacle> obstacle(Competitor competitor, Division division, PastChecks past) {
    return Obstacle.to(division, competitor.bib(), past, standing.draw(division.code()));
  }

  private PastChecks past(String bib) {
    return standing.past(bib);
  }

  /** The division that the rule book in force has under a code. */
  Division division(String code) throws StationException {
    Optional<Division> division = standing.ruleBook().flatMap((RuleBook b) -> b.division(code));
    if (division.isEmpty()) {
      throw StationException.misstep(
          "NO-SUCH-DIVISION",
          "Nothing was done.",
          "The rule book in force has no division " + code + ".",
          "Correct the roster or what was typed, or have the organizer correct the rule book.");
    }
    return division.get();
  }
}
