package lanewarden.audit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanewarden.audit.findings.Evidence;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;

/** Counts what the evidence holds. */
final class Figures {
  private Figures() {}

  static AuditSummary of(Evidence evidence) {
    List<Check> checks = evidence.standing().checks();
    return new AuditSummary(
        evidence.verification().entries(),
        checks.size(),
        competitors(checks),
        outcomes(checks),
        withoutVerdict(checks),
        inQuestion(checks),
        evidence.verification().faults(),
        evidence.findings(),
        evidence.verification().head());
  }

  /** How many checks ended with each outcome. One in question counts for none. */
  static Map<Outcome, Integer> outcomes(List<Check> checks) {
    Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
    counting(checks).forEach(c -> c.outcome().ifPresent(o -> outcomes.merge(o, 1, Integer::sum)));
    return outcomes;
  }

  /** How many checks that count have no verdict. */
  static int withoutVerdict(List<Check> checks) {
    return (int) counting(checks).stream().filter(c -> c.outcome().isEmpty()).count();
  }

  /** How many checks a hold of the line puts in question. */
  static int inQuestion(List<Check> checks) {
    return checks.size() - counting(checks).size();
  }

  /** The checks that no hold of the line puts in question. */
  static List<Check> counting(List<Check> checks) {
    return checks.stream().filter(c -> !c.inQuestion()).toList();
  }

  /** How many different bibs were checked. */
  static int competitors(List<Check> checks) {
    return (int) checks.stream().map(c -> c.opened().bib()).distinct().count();
  }
}
