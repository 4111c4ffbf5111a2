package lanewarden.rules;

import java.util.function.IntFunction;
import lanewarden.quantity.Energy;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/** How figures read in the sentences of this room. */
final class Wording {

  /** Decimals of a computed figure, unless more are needed to see on which side it lies. */
  static final int DECIMALS = 3;

  private Wording() {}

  /** The speed without zeros that say nothing: {@code 309 ft/s} for 309.00 ft/s. */
  static Speed plain(Speed speed) {
    return Speed.of(speed.value().stripTrailingZeros(), speed.unit());
  }

  /** The energy without zeros that say nothing. */
  static Energy plain(Energy energy) {
    return Energy.of(energy.value().stripTrailingZeros(), energy.unit());
  }

  /** A rounded figure that lies on the same side of {@code bound} as the exact one. */
  static <Q extends Comparable<Q>> Q rounded(IntFunction<Q> toDecimals, Q bound, int exactSide) {
    int decimals = DECIMALS;
    Q shown = toDecimals.apply(decimals);
    // 309.0004 against 309 must not print as 309: add decimals until the eye can follow the verdict
    while (Integer.signum(shown.compareTo(bound)) != Integer.signum(exactSide)) {
      decimals++;
      shown = toDecimals.apply(decimals);
    }
    return shown;
  }

  /** A reading as it was taken, and in the governing unit beside it where that is another. */
  static Sentence reading(Speed reading, Speed bound) {
    SpeedUnit governing = bound.unit();
    if (reading.unit() == governing) {
      return Sentence.of(Because.SHOWN, reading);
    }
    Speed converted =
        plain(
            rounded(decimals -> reading.to(governing, decimals), bound, reading.compareTo(bound)));
    return Sentence.of(Because.BESIDE, reading, converted);
  }
}
