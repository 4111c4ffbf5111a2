package lanewarden.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A physical value as it was written: an exact decimal and its unit.
 *
 * <p>Comparison is by magnitude, exact, and works across units of one kind; {@link #equals} asks
 * for the same writing (value with its decimals, and unit), as {@link BigDecimal#equals} does. A
 * quantity is never negative. Nothing is converted except for display ({@link #to}).
 *
 * @param <U> the units of this kind
 * @param <Q> the kind itself
 */
public abstract sealed class Quantity<U extends Enum<U> & Unit, Q extends Quantity<U, Q>>
    implements Comparable<Q>, Measure permits Speed, Mass, Force, Length, Energy, Momentum {

  private final BigDecimal value;
  private final U unit;
  private final BigDecimal si;

  /**
   * @throws QuantityException if {@code value} is negative
   */
  Quantity(BigDecimal value, U unit) {
    if (value.signum() < 0) {
      throw new QuantityException(
          Sentence.of(FigureTold.NOT_NEGATIVE),
          value.toPlainString() + " " + unit.symbol(),
          Sentence.of(Slip.MINUS));
    }
    this.value = value;
    this.unit = unit;
    this.si = value.multiply(unit.inSi());
  }

  /** A quantity of the same kind. */
  abstract Q make(BigDecimal value, U unit);

  /** The number as written, its trailing zeros kept. */
  public final BigDecimal value() {
    return value;
  }

  /** The unit as written. */
  public final U unit() {
    return unit;
  }

  /** The exact value in the coherent SI unit of this kind. */
  public final BigDecimal si() {
    return si;
  }

  /** The SI value as the nearest double, for statistics and physics. */
  public final double siDouble() {
    return si.doubleValue();
  }

  /** By magnitude, exactly, whatever the units. */
  @Override
  public final int compareTo(Q other) {
    return si.compareTo(other.si());
  }

  /** Whether this is strictly more than {@code other}; exact across units. */
  public final boolean isMoreThan(Q other) {
    return compareTo(other) > 0;
  }

  /** Whether this is {@code other} or less; exact across units. */
  public final boolean isAtMost(Q other) {
    return compareTo(other) <= 0;
  }

  /**
   * This value in another unit, rounded half to even: for display only, never for a verdict.
   *
   * @param decimals how many decimals to keep, zero or more
   */
  public final Q to(U other, int decimals) {
    return make(si.divide(other.inSi(), decimals, RoundingMode.HALF_EVEN), other);
  }

  @Override
  public final boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof Quantity<?, ?> that
        && getClass() == that.getClass()
        && value.equals(that.value)
        && unit.equals(that.unit);
  }

  @Override
  public final int hashCode() {
    return Objects.hash(value, unit);
  }

  /**
   * The number and the unit's symbol, for example {@code 300.1 ft/s}: reads back as an equal value.
   */
  @Override
  public final String toString() {
    return value.toPlainString() + " " + unit.symbol();
  }
}
