package lanewarden.chronograph;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * An arrow's way and the time it took, which is its speed without a rounding.
 *
 * @param metres the way, more than zero
 * @param seconds the time, more than zero
 */
record Passage(BigDecimal metres, BigDecimal seconds) {
  private static final int LEAST_DECIMALS = 2;
  private static final int LEAST_DIGITS = 6;
  private static final MathContext SIZE = new MathContext(LEAST_DIGITS + 4);

  /** How far an arrow of this speed comes in one second. */
  static Passage ofOneSecond(Speed speed) {
    return new Passage(speed.si(), BigDecimal.ONE);
  }

  /** This way and the next in one. */
  Passage then(Passage next) {
    return new Passage(metres.add(next.metres), seconds.add(next.seconds));
  }

  /**
   * Way by time, rounded half to even: to hundredths of the unit, or to so many more decimals that
   * six significant digits are kept.
   */
  Speed speed(SpeedUnit unit) {
    BigDecimal divisor = seconds.multiply(unit.inSi());
    BigDecimal size = metres.divide(divisor, SIZE);
    int decimals = Math.max(LEAST_DECIMALS, LEAST_DIGITS - (size.precision() - size.scale()));
    return Speed.of(metres.divide(divisor, decimals, RoundingMode.HALF_EVEN), unit);
  }

  /**
   * Whether the other speed differs from this one by at most the given share of this one. Exact:
   * with ways L, M and times t, u it is |M t − L u| ≤ share × L u.
   */
  boolean agrees(Passage other, Percent most) {
    BigDecimal own = metres.multiply(other.seconds);
    BigDecimal others = other.metres.multiply(seconds);
    return others.subtract(own).abs().compareTo(own.multiply(most.fraction())) <= 0;
  }
}
