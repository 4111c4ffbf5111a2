package lanewarden.rules;

import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/** What the readings of one check are measured against: a speed, or an energy of one arrow. */
sealed interface Bound permits SpeedBound, EnergyBound {

  /** Whether a single reading keeps it; exact in any units. */
  boolean admits(Speed reading);

  /** Whether a mean keeps it; exact in any units. */
  boolean admits(MeanSpeed mean);

  /** A reading as it is shown beside this bound. */
  Sentence show(Speed reading);

  /** A mean, rounded, on the side of this bound where the exact one lies. */
  Sentence show(MeanSpeed mean);

  /** The fastest speed that can keep it, for screens; exact only where the bound is a speed. */
  Speed fastest();

  /** The fastest true speed that the rule tolerates: the same without a guard band. */
  default Speed tolerated() {
    return fastest();
  }

  /** For example {@code limit 300 ft/s plus 3 % = 309 ft/s}. */
  Sentence inWords();

  /** Within or over, for a fact about the readings that is one or the other. */
  default Verdict verdict(boolean within, Sentence fact) {
    Sentence why = Sentence.of(Because.AGAINST, fact, inWords());
    return within ? new Verdict.Within(why) : new Verdict.Over(why);
  }
}
