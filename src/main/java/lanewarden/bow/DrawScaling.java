package lanewarden.bow;

import java.math.BigDecimal;
import java.math.RoundingMode;
import lanewarden.metrology.Belief;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Speed;

/**
 * How the speed of one arrow follows the draw weight of a bow: the energy grows as a power of it.
 *
 * @param least power that is supposed, more than zero
 * @param most power that is supposed, more than {@code least}; all between are alike likely
 */
public record DrawScaling(double least, double most) {

  /**
   * Power 1 is energy in proportion to the draw weight; 0.6 is the low end of a rule of thumb, 1½
   * to 2½ ft/s for each pound-force at 60 lbf and 300 ft/s (common practice of the trade).
   */
  public static final DrawScaling PRACTICE = new DrawScaling(0.6, 1);

  private static final int CELLS = 20;

  /**
   * @throws IllegalArgumentException if it is no range
   */
  public DrawScaling {
    if (!(least > 0 && most > least)) {
      throw new IllegalArgumentException("no range of powers from " + least + " to " + most);
    }
  }

  /** The least power as a number that is written. */
  public BigDecimal leastPower() {
    return written(least);
  }

  /** The most power as a number that is written. */
  public BigDecimal mostPower() {
    return written(most);
  }

  private static BigDecimal written(double power) {
    return BigDecimal.valueOf(power).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
  }

  /**
   * To which share of the present draw weight it must come down to bring the mean speed to a limit
   * or below: from the share that is enough with this confidence up to the one that perhaps is.
   *
   * @param speed of the arrow as the bow is set now, m/s
   * @param confidence one-sided, at least 0.5 and less than 1
   */
  public Interval shareFor(Belief speed, Speed limit, double confidence) {
    return new Interval(
        share(speed, limit.siDouble(), confidence), share(speed, limit.siDouble(), 1 - confidence));
  }

  /** By how much less the draw weight must be: the chance rises with the reduction. */
  private double share(Belief speed, double limit, double chance) {
    return 1 - Mixture.least(less -> chance(speed, limit, 1 - less), chance, -1, 1);
  }

  private double chance(Belief speed, double limit, double share) {
    double sum = 0;
    for (int i = 0; i < CELLS; i++) {
      double power = least + (i + 0.5) * (most - least) / CELLS;
      sum += speed.chanceUpTo(limit * Math.pow(share, -power / 2));
    }
    return sum / CELLS;
  }
}
