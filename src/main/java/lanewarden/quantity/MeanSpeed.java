package lanewarden.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The arithmetic mean of speeds, kept exact as a sum and a count, since a third has no decimal.
 *
 * <p>The mean of 299.8, 300.1 and 300.1 ft/s is not more than 300 ft/s; in binary floating point it
 * would be.
 */
public final class MeanSpeed {
  private final BigDecimal sumSi;
  private final int count;

  private MeanSpeed(BigDecimal sumSi, int count) {
    this.sumSi = sumSi;
    this.count = count;
  }

  /**
   * @param speeds at least one, in any units
   * @throws IllegalArgumentException if there is none
   */
  public static MeanSpeed of(List<Speed> speeds) {
    if (speeds.isEmpty()) {
      throw new IllegalArgumentException("no mean of no speeds");
    }
    return new MeanSpeed(
        speeds.stream().map(Speed::si).reduce(BigDecimal.ZERO, BigDecimal::add), speeds.size());
  }

  /** The sum of the speeds in m/s, exact. */
  public BigDecimal sumSi() {
    return sumSi;
  }

  /** How many speeds there are. */
  public int count() {
    return count;
  }

  /** Exactly: the sum against the count times {@code other}; negative, zero or positive. */
  public int compareTo(Speed other) {
    return sumSi.compareTo(other.si().multiply(BigDecimal.valueOf(count)));
  }

  /** Whether the mean is strictly more than {@code limit}. */
  public boolean isMoreThan(Speed limit) {
    return compareTo(limit) > 0;
  }

  /** The mean rounded half to even: for display only, never for a verdict. */
  public Speed to(SpeedUnit unit, int decimals) {
    BigDecimal divisor = unit.inSi().multiply(BigDecimal.valueOf(count));
    return Speed.of(sumSi.divide(divisor, decimals, RoundingMode.HALF_EVEN), unit);
  }
}
