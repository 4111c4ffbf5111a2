package lanewarden.journal;

import java.math.BigDecimal;
import java.util.Objects;
import lanewarden.quantity.Length;

/**
 * Where the instrument stands, and what slows the arrow on its way there. For telling the speed at
 * the bow, which no verdict rests on.
 *
 * @param distance from the bow to the middle of the instrument
 * @param shaftDiameter of the arrows, as supposed
 * @param dragCoefficient referred to the shaft's cross-section, more than zero
 * @param airDensity kg/m³, more than zero
 */
public record Place(
    Length distance, Length shaftDiameter, BigDecimal dragCoefficient, BigDecimal airDensity) {
  /**
   * @throws NullPointerException if a body that was read lacks a member
   * @throws IllegalArgumentException if coefficient or density is not more than zero
   */
  public Place {
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(shaftDiameter, "shaftDiameter");
    if (dragCoefficient.signum() <= 0 || airDensity.signum() <= 0) {
      throw new IllegalArgumentException("drag coefficient and air density must be above zero");
    }
  }
}
