package lanewarden.quantity;

import java.math.BigDecimal;

/** A momentum, as of an arrow in flight. */
public final class Momentum extends Quantity<MomentumUnit, Momentum> {

  private static final Sentence EXAMPLE = Sentence.of(FigureTold.MOMENTUM, "2.5 kg·m/s");

  private Momentum(BigDecimal value, MomentumUnit unit) {
    super(value, unit);
  }

  @Override
  Momentum make(BigDecimal value, MomentumUnit unit) {
    return new Momentum(value, unit);
  }

  /**
   * A value as written.
   *
   * @throws QuantityException if it is negative
   */
  public static Momentum of(BigDecimal value, MomentumUnit unit) {
    return new Momentum(value, unit);
  }

  /**
   * A value as written in digits, for example {@code of("300.1", …)}.
   *
   * @throws QuantityException if the digits are no plain decimal
   */
  public static Momentum of(String digits, MomentumUnit unit) {
    return new Momentum(Writing.decimal(digits, "a momentum"), unit);
  }

  /**
   * A computed or measured value in SI, as the shortest decimal that the double prints.
   *
   * @throws QuantityException if it is NaN, infinite or negative
   */
  public static Momentum ofSi(double value, MomentumUnit siUnit) {
    if (siUnit.inSi().compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(siUnit + " is not the SI unit");
    }
    return new Momentum(Writing.finite(value), siUnit);
  }

  /**
   * Reads a number with its unit.
   *
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  public static Momentum parse(String text) {
    return Writing.read(text, EXAMPLE, MomentumUnit.class, null, Momentum::new);
  }
}
