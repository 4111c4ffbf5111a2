package lanewarden.station;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;
import lanewarden.rules.SpeedLimit;
import lanewarden.rules.Verdict;

/**
 * A check as the screens show it: folded from the ledger, beside the rule that governs it.
 *
 * @param check what the ledger says of it
 * @param division whose rule judges it, as it stood when the check was opened
 * @param rechecksLeft how many more checks the rule allows if this one fails
 */
public record CheckView(Check check, Division division, int rechecksLeft) {

  /** The fastest speed that keeps the limit for this set-up; empty where none applies. */
  public Optional<Speed> fastest() {
    return division.rule().fastest(check.setUp());
  }

  /** The speed limit as written, where it is what governs this set-up. */
  public Optional<Speed> limit() {
    return division
        .rule()
        .speed()
        .filter(clause -> fastest().equals(Optional.of(clause.allowed())))
        .map(SpeedLimit::limit);
  }

  /** The unit in which speeds are shown where none is written. */
  public SpeedUnit unit() {
    return division.rule().unit();
  }

  /** How many shots may be taken; none where nothing is measured. */
  public int shotsAllowed() {
    return division.rule().shooting().map(how -> how.plan().allowed()).orElse(0);
  }

  /** The signed outcome, if there is one. */
  public Optional<Outcome> outcome() {
    return check.outcome();
  }

  /** Why it ended as it did, or what is missing. */
  public String words() {
    return check.verdict().map(v -> v.fact().reason()).orElseGet(() -> verdict().reason());
  }

  /** What the rule says of the shots so far. */
  Verdict verdict() {
    return check.judgedBy(division.rule());
  }

  /** How many shots were taken, void ones included. */
  public int shotsTaken() {
    return check.shots().size();
  }
}
