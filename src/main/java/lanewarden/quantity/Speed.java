package lanewarden.quantity;

import java.math.BigDecimal;

/** The speed of an arrow. */
public final class Speed extends Quantity<SpeedUnit, Speed> {

  private static final Sentence EXAMPLE = Sentence.of(FigureTold.SPEED, "300 ft/s");

  private Speed(BigDecimal value, SpeedUnit unit) {
    super(value, unit);
  }

  @Override
  Speed make(BigDecimal value, SpeedUnit unit) {
    return new Speed(value, unit);
  }

  /**
   * A value as written.
   *
   * @throws QuantityException if it is negative
   */
  public static Speed of(BigDecimal value, SpeedUnit unit) {
    return new Speed(value, unit);
  }

  /**
   * A value as written in digits, for example {@code of("300.1", …)}.
   *
   * @throws QuantityException if the digits are no plain decimal
   */
  public static Speed of(String digits, SpeedUnit unit) {
    return new Speed(Writing.decimal(digits, "a speed"), unit);
  }

  /**
   * A computed or measured value in SI, as the shortest decimal that the double prints.
   *
   * @throws QuantityException if it is NaN, infinite or negative
   */
  public static Speed ofSi(double value, SpeedUnit siUnit) {
    if (siUnit.inSi().compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(siUnit + " is not the SI unit");
    }
    return new Speed(Writing.finite(value), siUnit);
  }

  /**
   * Reads a number with its unit.
   *
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  public static Speed parse(String text) {
    return Writing.read(text, EXAMPLE, SpeedUnit.class, null, Speed::new);
  }

  /**
   * Reads a number with its unit, or in the given unit where it has none.
   *
   * @throws QuantityException if the text is no plain decimal, or its unit is not known
   */
  public static Speed parse(String text, SpeedUnit unitIfNone) {
    return Writing.read(text, EXAMPLE, SpeedUnit.class, unitIfNone, Speed::new);
  }

  /**
   * The exact sum, in the unit of both.
   *
   * @throws IllegalArgumentException if the units differ: a sum across units would need rounding
   */
  public Speed plus(Speed other) {
    if (unit() != other.unit()) {
      throw new IllegalArgumentException(
          "cannot add " + other + " to " + this + " without rounding");
    }
    return new Speed(value().add(other.value()), unit());
  }

  /** This speed and the given share of it, exactly: 280 ft/s plus 3 % is 288.40 ft/s. */
  public Speed plus(Percent share) {
    return new Speed(value().add(value().multiply(share.fraction())), unit());
  }
}
