package lanewarden.journal;

import java.util.List;
import java.util.Optional;
import lanewarden.rules.Consequence;
import lanewarden.rules.Division;
import lanewarden.rules.Lapse;

/**
 * The checks that one competitor had already, as far as they bear on the next.
 *
 * <p>A pass ends an account: fails before it do not count against a check that is called because
 * the pass lapsed. A check that is in question counts for nothing, neither as a pass nor as a fail;
 * it only lets its competitor come back.
 *
 * @param all in the order opened
 */
public record PastChecks(List<Check> all) {

  /** Copies the list. */
  public PastChecks {
    all = List.copyOf(all);
  }

  Optional<Check> last() {
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  private Optional<Check> lastPass() {
    return last().filter(PastChecks::isPass);
  }

  private static boolean isPass(Check check) {
    return !check.inQuestion() && check.outcome().equals(Optional.of(Outcome.WITHIN));
  }

  /** The pass that the competitor has, unless it lapsed by a change of division. */
  public Optional<Check> pass(Division now) {
    return lastPass().filter(check -> !lapsedByClass(check, now));
  }

  /** Whether the competitor's pass lapsed because they now shoot in another division. */
  public boolean passLapsedByClass(Division now) {
    return lastPass().filter(check -> lapsedByClass(check, now)).isPresent();
  }

  private static boolean lapsedByClass(Check pass, Division now) {
    return !pass.opened().division().equals(now.code())
        && now.rule().aftermath().lapses().contains(Lapse.ANOTHER_CLASS);
  }

  /** Whether the next check goes on where one in this division ended without a pass. */
  boolean goesOn(Division now) {
    return last()
        .filter(check -> !isPass(check))
        .filter(check -> check.opened().division().equals(now.code()))
        .isPresent();
  }

  /** The checks since the last pass. */
  private List<Check> sincePass() {
    int from = 0;
    for (int i = 0; i < all.size(); i++) {
      if (isPass(all.get(i))) {
        from = i + 1;
      }
    }
    return all.subList(from, all.size());
  }

  /** The fails that count: those since the last pass. */
  public List<Check> fails() {
    return sincePass().stream().filter(Check::usesRecheck).toList();
  }

  /**
   * What follows the last fail, where that is not a re-check; empty where there was no fail or the
   * rule leaves a re-check.
   *
   * <p>Who was not admitted may come back with another bow or arrow, unless barred or struck: it
   * was no fail at the speed limit and uses no re-check. A verdict of an older ledger says nothing
   * of what follows; then only the count of re-checks holds.
   */
  public Optional<Consequence> consequence() {
    return sincePass().stream()
        .filter(check -> !check.inQuestion())
        .flatMap(check -> check.verdict().stream())
        .flatMap(given -> given.follows().stream())
        .reduce((earlier, later) -> later)
        .filter(follows -> follows != Consequence.RECHECK);
  }
}
