package lanewarden.station;

import lanewarden.quantity.Extremes;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;

/**
 * The mass of an arrow as somebody types it. Only at entry is a lightest one asked for: what was
 * signed before stays readable.
 */
final class TypedArrow {

  private TypedArrow() {}

  /**
   * Of the whole arrow; grains without a unit.
   *
   * @throws QuantityException if it is no mass, or lighter than any arrow
   */
  static Mass mass(String typed) {
    Mass mass = Mass.parse(typed, MassUnit.GRAIN);
    if (Extremes.LIGHTEST_ARROW.isMoreThan(mass)) {
      throw new QuantityException(
          Sentence.of(FigureTold.WHOLE_ARROW),
          Sentence.of(FormTold.LIGHTER, mass, Extremes.LIGHTEST_ARROW),
          Sentence.of(FormTold.WEIGH_WHOLE));
    }
    return mass;
  }
}
