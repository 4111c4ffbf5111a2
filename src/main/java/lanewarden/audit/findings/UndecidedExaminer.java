package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;
import lanewarden.journal.TakenShot;
import lanewarden.rules.Division;
import lanewarden.rules.Doubt;
import lanewarden.rules.Missing;
import lanewarden.rules.Rule;
import lanewarden.rules.Verdict;

/**
 * Looks for competitors whose checks ended undecided one after the other because readings could not
 * be believed, with readings over the limit among them: too wide a spread, or more than the bow can
 * give.
 *
 * <p>Such a check uses up no re-check. Once that is bad luck; an archer who shoots one slow arrow
 * every time, or whose bow is stated weaker than it is, would never be over.
 */
final class UndecidedExaminer {
  private final Standing standing;
  private final List<Finding> findings;

  UndecidedExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at all checks, when the last entry is folded. */
  void finish() {
    Map<String, List<Check>> byBib = new LinkedHashMap<>();
    for (Check check : standing.checks()) {
      byBib.computeIfAbsent(check.opened().bib(), bib -> new ArrayList<>()).add(check);
    }
    byBib.values().forEach(this::inARow);
  }

  private void inARow(List<Check> ofOneBib) {
    List<Check> row = new ArrayList<>();
    for (Check check : ofOneBib) {
      if (over(check).isEmpty()) {
        tell(row);
        row.clear();
      } else {
        row.add(check);
      }
    }
    tell(row);
  }

  private void tell(List<Check> row) {
    if (row.size() < 2) {
      return;
    }
    String each =
        row.stream()
            .map(check -> "check " + check.number() + " with " + String.join(", ", over(check)))
            .collect(Collectors.joining("; "));
    findings.add(
        new Finding(
            Kind.UNDECIDED_AGAIN,
            row.stream().map(Check::number).toList(),
            "Bib "
                + row.get(0).opened().bib()
                + ", "
                + row.get(0).opened().name()
                + ": "
                + row.size()
                + " checks one after the other ended undecided, because readings could not be"
                + " believed, with some over the limit among them: "
                + each
                + ". None used up a re-check."));
  }

  /** The readings over the limit of a check that ended so; else none. */
  private List<String> over(Check check) {
    Optional<Rule> rule =
        standing
            .ruleBook(check.ruleBook())
            .flatMap(book -> book.division(check.opened().division()))
            .map(Division::rule);
    if (rule.isEmpty()
        || !check.outcome().equals(Optional.of(Outcome.NOT_DECIDED))
        || check.usesRecheck()
        || !isNotBelieved(check, rule.get())) {
      return List.of();
    }
    return check.shots().stream()
        .filter(TakenShot::stands)
        .map(shot -> shot.reading().speed())
        .filter(speed -> rule.get().exceeds(speed, check.setUp()))
        .map(Object::toString)
        .toList();
  }

  private static boolean isNotBelieved(Check check, Rule rule) {
    boolean tooWide =
        check.judgedBy(rule) instanceof Verdict.NotDecided open
            && open.missing() instanceof Missing.SpreadTooWide;
    return tooWide
        || check.doubts(rule).stream().anyMatch(doubt -> doubt.kind() == Doubt.Kind.IMPOSSIBLE);
  }
}
