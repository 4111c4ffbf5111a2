package lanewarden.station;

import lanewarden.quantity.Extremes;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.QuantityException;

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
          "the mass of a whole arrow",
          mass + ", which is lighter than any (" + Extremes.LIGHTEST_ARROW + " at least)",
          "weigh the whole arrow; a mass in grams is typed with its unit, such as \"22.8 g\"");
    }
    return mass;
  }
}
