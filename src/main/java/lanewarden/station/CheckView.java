package lanewarden.station;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;
import lanewarden.rules.Verdict;

/**
 * A check as the screens show it: folded from the ledger, beside the rule that governs it.
 *
 * @param check what the ledger says of it
 * @param division whose rule judges it, as it stood when the check was opened
 * @param rechecksLeft how many more checks the rule allows if this one fails
 */
public record CheckView(Check check, Division division, int rechecksLeft) {

  /** Limit plus tolerance in the governing unit; a speed equal to it is within. */
  public Speed allowed() {
    return division.rule().allowed();
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
    return division.rule().judge(check.judged());
  }

  /** How many shots were taken, void ones included. */
  public int shotsTaken() {
    return check.shots().size();
  }
}
