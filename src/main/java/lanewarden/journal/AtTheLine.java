package lanewarden.journal;

import java.util.Optional;

/** What officials sign of a check at the line: who did does not rule on it. */
public final class AtTheLine {
  private AtTheLine() {}

  /**
   * The check that an entry is of.
   *
   * @param sequence of the entry
   * @param fact that it says
   * @return the number of the check; empty where it is of none, or not signed at the line
   */
  public static Optional<Long> check(long sequence, Fact fact) {
    if (fact instanceof Fact.CheckOpened) {
      return Optional.of(sequence);
    } else if (fact instanceof SetUpStated stated) {
      return Optional.of(stated.check());
    } else if (fact instanceof Fact.ConditionTicked ticked) {
      return Optional.of(ticked.check());
    } else if (fact instanceof Fact.ReadingTaken taken) {
      return Optional.of(taken.check());
    } else if (fact instanceof Fact.ReadingVoided voided) {
      return Optional.of(voided.check());
    } else if (fact instanceof Fact.ReadingKept kept) {
      return Optional.of(kept.check());
    } else if (fact instanceof Fact.VerdictGiven given) {
      return Optional.of(given.check());
    } else if (fact instanceof Fact.CheckClosed closed) {
      return Optional.of(closed.check());
    }
    return Optional.empty();
  }
}
