package lanewarden.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;

/**
 * A competitor whose first check did not end within, or is in question: every attempt, and how it
 * ended.
 *
 * @param attempts in the order of the ledger
 * @param end in words: came back inside or not
 * @param shape the same as a shape
 */
record FailLine(
    String bib, String name, String division, List<Attempt> attempts, String end, String shape) {

  /**
   * One check of the competitor.
   *
   * @param check the entry that opened it
   * @param follows what was signed to follow it, or nothing
   */
  record Attempt(int number, long check, OutcomeMark outcome, String reason, String follows) {}

  /**
   * Everyone with a check that did not end within, in the order first called. Rechecks under a
   * protest are no attempts; where one counts by a ruling, the end says so.
   */
  static List<FailLine> of(Standing standing) {
    Map<String, List<Check>> byBib = new LinkedHashMap<>();
    for (Check check : standing.checks()) {
      if (check.opened().protest() == null) {
        byBib.computeIfAbsent(check.opened().bib(), b -> new ArrayList<>()).add(check);
      }
    }
    return byBib.values().stream()
        .filter(of -> of.size() > 1 || !isWithin(of.get(0)) || !isWithin(counting(of, standing)))
        .map(of -> line(of, counting(of, standing)))
        .toList();
  }

  private static Check counting(List<Check> checks, Standing standing) {
    return standing.counting(checks.get(checks.size() - 1));
  }

  private static boolean isWithin(Check check) {
    return !check.inQuestion() && check.outcome().equals(Optional.of(Outcome.WITHIN));
  }

  private static FailLine line(List<Check> checks, Check counts) {
    Check last = checks.get(checks.size() - 1);
    boolean failed =
        Figures.counting(checks).stream()
            .anyMatch(c -> c.outcome().equals(Optional.of(Outcome.OVER)));
    return new FailLine(
        last.opened().bib(),
        last.opened().name(),
        last.opened().division(),
        checks.stream().map(FailLine::attempt).toList(),
        counts.equals(last)
            ? end(last, failed)
            : OutcomeMark.of(counts).word()
                + " by the ruling on protest "
                + counts.opened().protest(),
        OutcomeMark.of(counts).shape());
  }

  private static String end(Check last, boolean failed) {
    if (isWithin(last)) {
      return (failed ? "came back inside at attempt " : "inside at attempt ")
          + last.opened().attempt();
    }
    if (last.inQuestion()) {
      return "in question: the last check counts for nothing";
    }
    if (last.outcome().isEmpty()) {
      return failed ? "did not come back inside: the last check has no verdict" : "no verdict";
    }
    return failed ? "did not come back inside" : last.outcome().get().word();
  }

  private static Attempt attempt(Check check) {
    return new Attempt(
        check.opened().attempt(),
        check.number(),
        OutcomeMark.of(check),
        CheckRow.reason(check),
        CheckRow.follows(check));
  }
}
