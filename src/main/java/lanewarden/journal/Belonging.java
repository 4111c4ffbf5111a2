package lanewarden.journal;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which checks an entry belongs to: told here, for whoever asks who signed something of a check.
 */
public final class Belonging {
  private Belonging() {}

  /**
   * The check that a fact names; of an opening, the one that it opens.
   *
   * @param sequence of the entry
   * @param fact that it says
   * @return the number of the check; empty where the fact names none
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
    } else if (fact instanceof Fact.LineRefused line) {
      return Optional.ofNullable(line.check());
    } else if (fact instanceof Fact.ReadingVoided voided) {
      return Optional.of(voided.check());
    } else if (fact instanceof Fact.ReadingFlagged flagged) {
      return Optional.of(flagged.check());
    } else if (fact instanceof Fact.ReadingKept kept) {
      return Optional.of(kept.check());
    } else if (fact instanceof Fact.VerdictGiven given) {
      return Optional.of(given.check());
    } else if (fact instanceof Fact.CheckClosed closed) {
      return Optional.of(closed.check());
    } else if (fact instanceof ProtestFact.ProtestFiled filed) {
      return Optional.of(filed.check());
    } else if (fact instanceof ProtestFact.CorrectionMade made) {
      return Optional.of(made.check());
    }
    return Optional.empty();
  }

  /**
   * Whether a fact of a check is an act at the line, which the official on duty signs. Protests and
   * corrections are signed beside it, and a refused line by whoever has the station.
   */
  public static boolean isAtTheLine(Fact fact) {
    return !(fact instanceof ProtestFact)
        && !(fact instanceof Fact.LineRefused)
        && check(0, fact).isPresent();
  }

  /**
   * All checks that an entry belongs to: the one it names, those that a hold puts in question or
   * its end releases, those that a ruling is about, the one whose correction is confirmed.
   *
   * @param sequence of the entry
   * @param fact that it says
   * @param standing into which it was folded
   */
  public static Set<Long> checks(long sequence, Fact fact, Standing standing) {
    Set<Long> checks = new TreeSet<>();
    check(sequence, fact).ifPresent(checks::add);
    if (fact instanceof Fact.LineHeld held) {
      checks.addAll(held.checks());
    } else if (fact instanceof Fact.HoldLifted lifted) {
      standing.holds().stream()
          .filter(hold -> hold.number() == lifted.hold())
          .map(hold -> hold.fact().checks())
          .forEach(checks::addAll);
    } else if (fact instanceof ProtestFact.ProtestRuled ruled) {
      standing.docket().protest(ruled.protest()).map(Protest::all).ifPresent(checks::addAll);
    } else if (fact instanceof ProtestFact.CorrectionConfirmed confirmed) {
      standing
          .docket()
          .correction(confirmed.correction())
          .ifPresent(made -> checks.add(made.fact().check()));
    }
    return checks;
  }
}
