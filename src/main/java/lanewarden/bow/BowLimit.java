package lanewarden.bow;

import java.math.BigDecimal;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
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

  private static final BigDecimal BEHIND_PIVOT =
      new BigDecimal("1.75").multiply(LengthUnit.INCH.inSi());

  /**
   * @throws IllegalArgumentException if there is no draw weight or no power stroke
   */
  public BowLimit {
    if (drawWeight.si().signum() <= 0) {
      throw new IllegalArgumentException("a bow needs a draw weight of more than zero");
    }
    if (!leavesStroke(drawLength, braceHeight)) {
      throw new IllegalArgumentException(
          "a draw length of "
              + drawLength
              + " leaves no power stroke behind a brace height of "
              + braceHeight
              + " and 1.75 in; check both");
    }
  }

  /** Whether the string pushes the arrow at all, with these figures. */
  public static boolean leavesStroke(Length drawLength, Length braceHeight) {
    return stroke(drawLength, braceHeight).signum() > 0;
  }

  private static BigDecimal stroke(Length drawLength, Length braceHeight) {
    return drawLength.si().subtract(BEHIND_PIVOT).subtract(braceHeight.si());
  }

  /** How far the string pushes the arrow: draw length − 1¾ in − brace height, in metres, exact. */
  public Length powerStroke() {
    return Length.of(stroke(drawLength, braceHeight), LengthUnit.METRE);
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

  /** Energy carried and energy available, for a person. */
  public String inWords(Speed speed, Arrow arrow) {
    return speed
        + " is "
        + (isImpossible(speed, arrow) ? "impossible: " : "possible: ")
        + arrow.kineticEnergyAt(speed).to(EnergyUnit.FOOT_POUND, 0)
        + " of "
        + mostEnergy().to(EnergyUnit.FOOT_POUND, 0)
        + " available";
  }
}
