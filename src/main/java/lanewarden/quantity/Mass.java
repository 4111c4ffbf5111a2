package lanewarden.quantity;

import java.math.BigDecimal;

/** A mass, as of an arrow in grains. */
public final class Mass extends Quantity<MassUnit, Mass> {

  private static final Sentence EXAMPLE = Sentence.of(FigureTold.MASS, "350 gr");

  private Mass(BigDecimal value, MassUnit unit) {
    super(value, unit);
  }

  @Override
  Mass make(BigDecimal value, MassUnit unit) {
    return new Mass(value, unit);
  }

  /**
   * A value as written.
   *
   * @throws QuantityException if it is negative
   */
  public static Mass of(BigDecimal value, MassUnit unit) {
    return new Mass(value, unit);
  }

  /**
   * A value as written in digits, for example {@code of("300.1", …)}.
   *
   * @throws QuantityException if the digits are no plain decimal
   */
  public static Mass of(String digits, MassUnit unit) {
    return new Mass(Writing.decimal(digits, "a mass"), unit);
  }

  /**
   * A computed or measured value in SI, as the shortest decimal that the double prints.
   *
   * @throws QuantityException if it is NaN, infinite or negative
   */
  public static Mass ofSi(double value, MassUnit siUnit) {
    if (siUnit.inSi().compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(siUnit + " is not the SI unit");
    }
    return new Mass(Writing.finite(value), siUnit);
  }

  /**
   * Reads a number with its unit.
   *
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  public static Mass parse(String text) {
    return Writing.read(text, EXAMPLE, MassUnit.class, null, Mass::new);
  }

  /**
   * Reads a number with its unit, or in the given unit where it has none.
   *
   * @throws QuantityException if the text is no plain decimal, or its unit is not known
   */
  public static Mass parse(String text, MassUnit unitIfNone) {
    return Writing.read(text, EXAMPLE, MassUnit.class, unitIfNone, Mass::new);
  }
}
