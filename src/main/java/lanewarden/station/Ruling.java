package lanewarden.station;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.rules.Division;
import lanewarden.rules.Phase;
import lanewarden.rules.Verdict;

/** The verdict that the rule gives on a check, with what follows it; nothing while it goes on. */
final class Ruling {

  private Ruling() {}

  /** On a check as it will stand. */
  static Optional<Fact> on(Check check, Division division) {
    return of(
        check.judgedBy(division.rule()),
        division,
        check.number(),
        check.ruleBook(),
        check.phase(),
        check.counted(division.rule()));
  }

  /** On a check that is about to be opened: some rules decide without a shot. */
  static Optional<Fact> on(
      Fact.CheckOpened opening, long number, Division division, String ruleBook, Phase phase) {
    Verdict verdict = division.rule().judge(opening.setUp(), Set.of(), List.of());
    return of(verdict, division, number, ruleBook, phase, List.of());
  }

  private static Optional<Fact> of(
      Verdict verdict,
      Division division,
      long check,
      String ruleBook,
      Phase phase,
      List<Long> readings) {
    if (!verdict.ends()) {
      return Optional.empty();
    }
    return Optional.of(
        new Fact.VerdictGiven(
            check,
            ruleBook,
            Outcome.of(verdict),
            verdict.reason(),
            readings,
            division.rule().aftermath().follows(verdict, phase).orElse(null)));
  }
}
