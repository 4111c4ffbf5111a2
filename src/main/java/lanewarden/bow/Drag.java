package lanewarden.bow;

import java.util.Optional;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * How an arrow slows in air: v = v₀·exp(−kx) with k = ρ·C_D·π·d²/(8m), drag being proportional to
 * the square of the speed. For display only: the coefficient depends on arrow and flight (1.56 to
 * 2.05 in Ortiz et al. 2020, Proceedings 49(1) 56), so no verdict may rest on it unseen.
 *
 * @param perMetre k, share of its speed that the arrow loses on each metre, zero or more; infinite
 *     where the figures were so far off that no number holds it
 */
public record Drag(double perMetre) {
  /** An arrow that lost more than half of its speed on the way did not fly: the figures are off. */
  private static final double MOST_FACTOR = 2;

  /**
   * @throws IllegalArgumentException if k is negative or no number
   */
  public Drag {
    if (!(perMetre >= 0)) {
      throw new IllegalArgumentException("a drag must be a number from zero up, not " + perMetre);
    }
  }

  /**
   * Of a shaft in air.
   *
   * @param airDensity ρ, kg/m³; about 1.2 near sea level
   * @param coefficient C_D, referred to the shaft's cross-section
   * @throws IllegalArgumentException if the arrow has no mass
   */
  public static Drag of(double airDensity, double coefficient, Length diameter, Mass arrow) {
    if (arrow.si().signum() <= 0) {
      throw new IllegalArgumentException("an arrow needs a mass of more than zero");
    }
    double d = diameter.siDouble();
    return new Drag(airDensity * coefficient * Math.PI * d * d / (8 * arrow.siDouble()));
  }

  /** The speed after a distance, from the speed at the bow. */
  public Speed at(Length distance, Speed atBow) {
    return times(atBow, Math.exp(-perMetre * distance.siDouble()));
  }

  /**
   * The speed at the bow, from a reading at a distance; undoes {@link #at}.
   *
   * @return empty where it is not computable: it would be more than twice the reading, as only a
   *     misprint in the figures of way, air or shaft makes it
   */
  public Optional<Speed> atBow(Length distance, Speed reading) {
    double factor = Math.exp(perMetre * distance.siDouble());
    return factor <= MOST_FACTOR ? Optional.of(times(reading, factor)) : Optional.empty();
  }

  private static Speed times(Speed speed, double factor) {
    return Speed.ofSi(speed.siDouble() * factor, SpeedUnit.METRES_PER_SECOND);
  }
}
