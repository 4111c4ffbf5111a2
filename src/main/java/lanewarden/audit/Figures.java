package lanewarden.audit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;

/** Counts what the evidence holds. */
final class Figures {
  private Figures() {}

  static AuditSummary of(Evidence evidence) {
    List<Check> checks = evidence.standing().checks();
    Map<Outcome, Integer> outcomes = outcomes(checks);
    return new AuditSummary(
        evidence.verification().entries(),
        checks.size(),
        competitors(checks),
        outcomes,
        checks.size() - outcomes.values().stream().mapToInt(Integer::intValue).sum(),
        evidence.verification().faults(),
        evidence.findings(),
        evidence.verification().head());
  }

  /** How many checks ended with each outcome. */
  static Map<Outcome, Integer> outcomes(List<Check> checks) {
    Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
    checks.forEach(c -> c.outcome().ifPresent(o -> outcomes.merge(o, 1, Integer::sum)));
    return outcomes;
  }

  /** How many different bibs were checked. */
  static int competitors(List<Check> checks) {
    return (int) checks.stream().map(c -> c.opened().bib()).distinct().count();
  }
}
