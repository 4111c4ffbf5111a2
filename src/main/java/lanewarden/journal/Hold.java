package lanewarden.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * A hold of the line, as folded from the ledger.
 *
 * @param number the sequence of the entry that put it on
 * @param at when it was put on
 * @param signer thumbprint of the official's key that put it on
 * @param fact why, and which checks it puts in question
 * @param lifted how it was lifted, if it was
 */
public record Hold(
    long number, Instant at, String signer, Fact.LineHeld fact, Optional<Fact.HoldLifted> lifted) {

  /** Whether it is not lifted yet. */
  public boolean stands() {
    return lifted.isEmpty();
  }

  /** Whether an official put it on; else a verification was out of its limits. */
  public boolean byHand() {
    return fact.verification() == null;
  }

  /**
   * Whether it puts its checks in question now. What an official held only while the doubt lasted
   * is cleared when it is lifted, since good verifications or a withdrawn doubt then lie on both
   * sides; what a verification out of limits touched is not.
   */
  boolean questions() {
    return stands() || !byHand();
  }

  Hold lift(Fact.HoldLifted fact) {
    return new Hold(number, at, signer, this.fact, Optional.of(fact));
  }
}
