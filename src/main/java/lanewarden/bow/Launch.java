package lanewarden.bow;

import lanewarden.quantity.Energy;
import lanewarden.quantity.Speed;

/**
 * An arrow that left a bow of known stored energy: what became of that energy.
 *
 * @param arrow as weighed
 * @param speed at the bow, more than zero
 * @param stored by the drawn bow, more than zero; from a {@link DrawCurve} or {@link DrawShape}
 */
public record Launch(Arrow arrow, Speed speed, Energy stored) {
  /**
   * @throws IllegalArgumentException if there is no speed or no energy
   */
  public Launch {
    if (speed.si().signum() <= 0 || stored.si().signum() <= 0) {
      throw new IllegalArgumentException("a launch needs a speed and an energy of more than zero");
    }
  }

  /** The share of the stored energy that the arrow carries away; above 1 the figures are off. */
  public double efficiency() {
    return arrow.kineticEnergyAt(speed).siDouble() / stored.siDouble();
  }

  /**
   * The mass that would have to fly with the arrow to account for what it does not carry, kg: K =
   * 2E/v² − m. Negative where the figures are off.
   */
  public double virtualMass() {
    return 2 * stored.siDouble() / Math.pow(speed.siDouble(), 2) - arrow.mass().siDouble();
  }
}
