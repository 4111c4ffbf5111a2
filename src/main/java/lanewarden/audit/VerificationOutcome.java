package lanewarden.audit;

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
record VerificationOutcome(boolean passes, boolean convicts, String words) {

  static VerificationOutcome of(InstrumentVerification verification) {
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
}
