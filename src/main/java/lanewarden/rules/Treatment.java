package lanewarden.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * What is done to each reading before it decides; exact.
 *
 * @param toBow the share that is added to each reading, because the arrow was faster at the bow;
 *     empty where the reading counts as it is
 * @param rounding of what comes of that
 */
public record Treatment(Optional<Percent> toBow, Rounding rounding) {

  /** The reading counts as it is. */
  public static Treatment none() {
    return new Treatment(Optional.empty(), new Rounding.None());
  }

  /** The speed that is compared. */
  public Speed of(Speed reading) {
    return rounding.of(toBow.map(reading::plus).orElse(reading));
  }

  /** Whether a reading counts as it is. */
  public boolean isNone() {
    return toBow.isEmpty() && rounding.isNone();
  }

  /** A reading of so many decimals that is raised to about this, before any rounding. */
  BigDecimal reading(BigDecimal compared, int decimals) {
    return toBow
        .map(share -> compared.divide(BigDecimal.ONE.add(share.fraction()), MathContext.DECIMAL64))
        .orElse(compared)
        .setScale(decimals, RoundingMode.HALF_UP);
  }

  /** For example {@code raised by 0.5 % to the speed at the bow, then rounded down …}. */
  Sentence inWords() {
    if (toBow.isEmpty()) {
      return rounding.ofReadings();
    }
    Percent share = toBow.get();
    return rounding.isNone()
        ? Sentence.of(Because.RAISED, share)
        : Sentence.of(Because.RAISED_THEN, share, rounding.ofReadings());
  }
}
