package lanewarden.quantity;

import java.math.BigDecimal;

/** An energy, as the kinetic energy of an arrow. */
public final class Energy extends Quantity<EnergyUnit, Energy> {

  private static final Sentence EXAMPLE = Sentence.of(FigureTold.ENERGY, "165 J");

  private Energy(BigDecimal value, EnergyUnit unit) {
    super(value, unit);
  }

  @Override
  Energy make(BigDecimal value, EnergyUnit unit) {
    return new Energy(value, unit);
  }

  /**
   * A value as written.
   *
   * @throws QuantityException if it is negative
   */
  public static Energy of(BigDecimal value, EnergyUnit unit) {
    return new Energy(value, unit);
  }

  /**
   * A value as written in digits, for example {@code of("300.1", …)}.
   *
   * @throws QuantityException if the digits are no plain decimal
   */
  public static Energy of(String digits, EnergyUnit unit) {
    return new Energy(Writing.decimal(digits, "an energy"), unit);
  }

  /**
   * A computed or measured value in SI, as the shortest decimal that the double prints.
   *
   * @throws QuantityException if it is NaN, infinite or negative
   */
  public static Energy ofSi(double value, EnergyUnit siUnit) {
    if (siUnit.inSi().compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(siUnit + " is not the SI unit");
    }
    return new Energy(Writing.finite(value), siUnit);
  }

  /**
   * Reads a number with its unit.
   *
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  public static Energy parse(String text) {
    return Writing.read(text, EXAMPLE, EnergyUnit.class, null, Energy::new);
  }
}
