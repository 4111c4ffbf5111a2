package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.List;
import lanewarden.journal.InstrumentVerification;
import lanewarden.metrology.Deviation;
import lanewarden.metrology.ReferenceComparison;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;

/**
 * What follows from the shots of a verification by the limits signed with it, computed anew.
 *
 * @param passes whether all shots are there, and bias and spread keep their limits
 * @param convicts whether at least two shots show it out of its limits, all there or not
 * @param words the figures, or what is missing
 */
public record VerificationOutcome(boolean passes, boolean convicts, String words) {

  /** What a verification amounts to, reckoned from its shots. */
  public static VerificationOutcome of(InstrumentVerification verification) {
    List<ReferenceComparison.Pair> pairs = new ArrayList<>();
    for (InstrumentVerification.Shot shot : verification.shots()) {
      Speed reference = shot.reference();
      if (reference != null) {
        pairs.add(new ReferenceComparison.Pair(shot.fact().speed(), reference));
      }
    }
    if (pairs.isEmpty()) {
      return new VerificationOutcome(false, false, "no shot has a reference value");
    }
    try {
      Deviation bias = Deviation.parse(verification.began().mostBias());
      Deviation spread = Deviation.parse(verification.began().mostSpread());
      ReferenceComparison shots = new ReferenceComparison(pairs);
      return new VerificationOutcome(
          verification.isComplete()
              && shots.against(bias, spread) == ReferenceComparison.Outcome.IN_LIMITS,
          shots.convicts(bias, spread),
          shots.inWords(bias, spread)
              + (verification.isComplete()
                  ? ""
                  : ", of " + verification.began().shots() + " shots agreed"));
    } catch (QuantityException e) {
      return new VerificationOutcome(false, false, "its limits cannot be read: " + e.getMessage());
    }
  }

  /**
   * In which ways a later verification allowed more than one before it, in words; none where it is
   * as strict. Shares are compared at the speed of the later reference. A limit that cannot be read
   * is no strict one.
   */
  static List<String> looser(InstrumentVerification before, InstrumentVerification later) {
    List<String> ways = new ArrayList<>();
    for (InstrumentVerification.Shot shot : later.shots()) {
      Speed at = shot.reference();
      if (at != null && ways.isEmpty()) {
        looser("bias", before.began().mostBias(), later.began().mostBias(), at, ways);
        looser("spread", before.began().mostSpread(), later.began().mostSpread(), at, ways);
      }
    }
    if (later.began().shots() < before.began().shots()) {
      ways.add(later.began().shots() + " shots instead of " + before.began().shots());
    }
    return ways;
  }

  private static void looser(String what, String before, String later, Speed at, List<String> to) {
    try {
      if (Deviation.parse(later).siAt(at.si()).compareTo(Deviation.parse(before).siAt(at.si()))
          > 0) {
        to.add(what + " at most " + later + " instead of " + before);
      }
    } catch (QuantityException unreadable) {
      to.add(what + " at most " + later + " instead of " + before + ", one of which is no limit");
    }
  }
}
