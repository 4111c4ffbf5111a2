package lanewarden.bow;

import lanewarden.metrology.Estimate;
import lanewarden.metrology.StraightLine;
import lanewarden.quantity.Mass;

/**
 * An arrow of a weighed mass and the mean speed a bow gives it.
 *
 * @param mass more than zero
 * @param speed mean, m/s, with the standard uncertainty that shots, display and instrument leave:
 *     more than zero, since no reading is exact
 */
public record MeasuredArrow(Mass mass, Estimate speed) {
  /**
   * @throws IllegalArgumentException if a figure is zero
   */
  public MeasuredArrow {
    if (mass.si().signum() <= 0) {
      throw new IllegalArgumentException("an arrow needs a mass of more than zero");
    }
    if (!(speed.value() > 0 && speed.standard() > 0)) {
      throw new IllegalArgumentException(
          "a measured speed and its uncertainty are more than zero, not " + speed);
    }
  }

  /** 1/v² against m: in this form the energy model is a straight line. */
  StraightLine.Point linear() {
    double v = speed.value();
    return new StraightLine.Point(mass.siDouble(), 1 / (v * v), 2 * speed.standard() / (v * v * v));
  }

  /** How much it says, v²/u², whatever the unit. */
  double weight() {
    return Math.pow(speed.value() / speed.standard(), 2);
  }
}
