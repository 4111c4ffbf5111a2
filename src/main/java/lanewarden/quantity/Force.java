package lanewarden.quantity;

import java.math.BigDecimal;

/** A force, as the draw weight of a bow in pounds-force. */
public final class Force extends Quantity<ForceUnit, Force> {

  private static final Sentence EXAMPLE = Sentence.of(FigureTold.FORCE, "60 lbf");

  private Force(BigDecimal value, ForceUnit unit) {
    super(value, unit);
  }

  @Override
  Force make(BigDecimal value, ForceUnit unit) {
    return new Force(value, unit);
  }

  /**
   * A value as written.
   *
   * @throws QuantityException if it is negative
   */
  public static Force of(BigDecimal value, ForceUnit unit) {
    return new Force(value, unit);
  }

  /**
   * A value as written in digits, for example {@code of("300.1", …)}.
   *
   * @throws QuantityException if the digits are no plain decimal
   */
  public static Force of(String digits, ForceUnit unit) {
    return new Force(Writing.decimal(digits, "a force"), unit);
  }

  /**
   * A computed or measured value in SI, as the shortest decimal that the double prints.
   *
   * @throws QuantityException if it is NaN, infinite or negative
   */
  public static Force ofSi(double value, ForceUnit siUnit) {
    if (siUnit.inSi().compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(siUnit + " is not the SI unit");
    }
    return new Force(Writing.finite(value), siUnit);
  }

  /**
   * Reads a number with its unit.
   *
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  public static Force parse(String text) {
    return Writing.read(text, EXAMPLE, ForceUnit.class, null, Force::new);
  }

  /**
   * Reads a number with its unit, or in the given unit where it has none.
   *
   * @throws QuantityException if the text is no plain decimal, or its unit is not known
   */
  public static Force parse(String text, ForceUnit unitIfNone) {
    return Writing.read(text, EXAMPLE, ForceUnit.class, unitIfNone, Force::new);
  }
}
