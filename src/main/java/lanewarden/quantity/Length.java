package lanewarden.quantity;

import java.math.BigDecimal;

/** A length. */
public final class Length extends Quantity<LengthUnit, Length> {

  private static final Sentence EXAMPLE = Sentence.of(FigureTold.LENGTH, "28 in");

  private Length(BigDecimal value, LengthUnit unit) {
    super(value, unit);
  }

  @Override
  Length make(BigDecimal value, LengthUnit unit) {
    return new Length(value, unit);
  }

  /**
   * A value as written.
   *
   * @throws QuantityException if it is negative
   */
  public static Length of(BigDecimal value, LengthUnit unit) {
    return new Length(value, unit);
  }

  /**
   * A value as written in digits, for example {@code of("300.1", …)}.
   *
   * @throws QuantityException if the digits are no plain decimal
   */
  public static Length of(String digits, LengthUnit unit) {
    return new Length(Writing.decimal(digits, "a length"), unit);
  }

  /**
   * A computed or measured value in SI, as the shortest decimal that the double prints.
   *
   * @throws QuantityException if it is NaN, infinite or negative
   */
  public static Length ofSi(double value, LengthUnit siUnit) {
    if (siUnit.inSi().compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(siUnit + " is not the SI unit");
    }
    return new Length(Writing.finite(value), siUnit);
  }

  /**
   * Reads a number with its unit.
   *
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  public static Length parse(String text) {
    return Writing.read(text, EXAMPLE, LengthUnit.class, null, Length::new);
  }

  /**
   * Reads a number with its unit, or in the given unit where it has none.
   *
   * @throws QuantityException if the text is no plain decimal, or its unit is not known
   */
  public static Length parse(String text, LengthUnit unitIfNone) {
    return Writing.read(
        text, Sentence.of(FigureTold.A_LENGTH), LengthUnit.class, unitIfNone, Length::new);
  }
}
