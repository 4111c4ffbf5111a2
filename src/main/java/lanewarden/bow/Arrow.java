package lanewarden.bow;

import java.math.BigDecimal;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Momentum;
import lanewarden.quantity.MomentumUnit;
import lanewarden.quantity.Speed;

/**
 * An arrow of a weighed mass, and what it carries at a speed.
 *
 * @param mass of the whole arrow, point and nock included
 */
public record Arrow(Mass mass) {

  private static final BigDecimal HALF = new BigDecimal("0.5");

  /** Kinetic energy ½mv² in joules, exact. */
  public Energy kineticEnergyAt(Speed speed) {
    return Energy.of(mass.si().multiply(speed.si().pow(2)).multiply(HALF), EnergyUnit.JOULE);
  }

  /** Momentum mv in kg·m/s, exact. */
  public Momentum momentumAt(Speed speed) {
    return Momentum.of(mass.si().multiply(speed.si()), MomentumUnit.KILOGRAM_METRE_PER_SECOND);
  }
}
