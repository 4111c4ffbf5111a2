package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.InstrumentVerification;
import lanewarden.metrology.Deviation;
import lanewarden.metrology.ReferenceComparison;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/** What the shots of a verification amount to, by the limits that were signed when it began. */
record Comparison(ReferenceComparison shots, Deviation mostBias, Deviation mostSpread) {

  /** Of the shots whose reference value is known; empty while there is none. */
  static Optional<Comparison> of(InstrumentVerification verification) {
    List<ReferenceComparison.Pair> pairs = new ArrayList<>();
    for (InstrumentVerification.Shot shot : verification.shots()) {
      Speed reference = shot.reference();
      if (reference != null) {
        pairs.add(new ReferenceComparison.Pair(shot.fact().speed(), reference));
      }
    }
    return pairs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Comparison(
                new ReferenceComparison(pairs),
                Deviation.parse(verification.began().mostBias()),
                Deviation.parse(verification.began().mostSpread())));
  }

  /** Whether bias and spread keep their limits. */
  boolean passes() {
    return shots.against(mostBias, mostSpread) == ReferenceComparison.Outcome.IN_LIMITS;
  }

  /** Whether it is out of its limits by enough shots to say so, however many were agreed. */
  boolean convicts() {
    return shots.convicts(mostBias, mostSpread);
  }

  /** Why the line is held where it is out of them. */
  String outInWords() {
    return "the instrument is out of its limits: " + inWords();
  }

  /** Bias and spread beside their limits. */
  Sentence inWords() {
    return shots.inWords(mostBias, mostSpread);
  }
}
