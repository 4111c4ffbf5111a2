package lanewarden.bow;

import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.PowerStroke;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * The most a bow can give an arrow, from its figures alone.
 *
 * <p>The draw force is nowhere more than its peak, so the work of drawing is at most peak draw
 * weight times power stroke, and no arrow carries more than that. A reading above it is a misread,
 * not a fast arrow. Exact; the figures' own errors are not in it.
 *
 * @param drawWeight peak of the draw
 * @param drawLength pivot-point draw plus 1¾ in (AMO FP-3, 2000)
 * @param braceHeight from the grip's pivot point to the string at rest
 */
public record BowLimit(Force drawWeight, Length drawLength, Length braceHeight) {

  /** What a speed needs, and what the bow has. */
  public enum Need implements Sentence.Form {
    /** It needs more. */
    IMPOSSIBLE("{0} is impossible: {1} of {2} available"),
    /** It does not. */
    POSSIBLE("{0} is possible: {1} of {2} available");

    private final String english;

    Need(String english) {
      this.english = english;
    }

    @Override
    public String english() {
      return english;
    }
  }

  /**
   * @throws IllegalArgumentException if there is no draw weight or no power stroke
   */
  public BowLimit {
    if (drawWeight.si().signum() <= 0) {
      throw new IllegalArgumentException("a bow needs a draw weight of more than zero");
    }
    PowerStroke stroke = new PowerStroke(drawLength, braceHeight);
    if (!stroke.isSome()) {
      throw new IllegalArgumentException(stroke.inWords() + "; check both");
    }
  }

  /** How far the string pushes the arrow, in metres, exact. */
  public Length powerStroke() {
    return new PowerStroke(drawLength, braceHeight).length();
  }

  /** Peak draw weight times power stroke, in joules, exact. */
  public Energy mostEnergy() {
    return Energy.of(drawWeight.si().multiply(powerStroke().si()), EnergyUnit.JOULE);
  }

  /** Whether the arrow would carry more energy at this speed than the bow can give; exact. */
  public boolean isImpossible(Speed speed, Arrow arrow) {
    return arrow.kineticEnergyAt(speed).isMoreThan(mostEnergy());
  }

  /**
   * The speed at which the arrow's kinetic energy is all of {@link #mostEnergy}: for display, to
   * double precision; {@link #isImpossible} compares energies.
   *
   * @throws IllegalArgumentException if the arrow has no mass
   */
  public Speed fastest(Arrow arrow) {
    if (arrow.mass().si().signum() <= 0) {
      throw new IllegalArgumentException("an arrow needs a mass of more than zero");
    }
    double speed = Math.sqrt(2 * mostEnergy().siDouble() / arrow.mass().siDouble());
    return Speed.ofSi(speed, SpeedUnit.METRES_PER_SECOND);
  }

  /**
   * Energy carried and energy available, for a person: with so many decimals, none if that does,
   * that the two figures differ as the energies do.
   */
  public Sentence sentence(Speed speed, Arrow arrow) {
    Energy carried = arrow.kineticEnergyAt(speed);
    int side = Integer.signum(carried.compareTo(mostEnergy()));
    int decimals = 0;
    while (Integer.signum(shown(carried, decimals).compareTo(shown(mostEnergy(), decimals)))
        != side) {
      decimals++;
    }
    return Sentence.of(
        isImpossible(speed, arrow) ? Need.IMPOSSIBLE : Need.POSSIBLE,
        speed,
        shown(carried, decimals),
        shown(mostEnergy(), decimals));
  }

  private static Energy shown(Energy energy, int decimals) {
    return energy.to(EnergyUnit.FOOT_POUND, decimals);
  }
}
