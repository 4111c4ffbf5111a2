package lanewarden.bow;

import java.util.stream.IntStream;
import lanewarden.metrology.Belief;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;

/**
 * How the speed of one bow follows the mass of the arrow: ½(m + K)v² stays the same for every arrow
 * mass m, with the bow's virtual mass K (own algebra).
 *
 * @param supposed of K; one arrow says nothing of it
 */
public record ArrowScaling(VirtualMassRange supposed) {
  /** Of a compound bow. */
  public static final ArrowScaling PRACTICE = new ArrowScaling(VirtualMassRange.COMPOUND);

  /** One grain each of the usual range. */
  private static final int CELLS = 80;

  /**
   * How likely an arrow of another mass is at most so fast.
   *
   * @param speed of the arrow that was shot, m/s
   * @param shot its mass
   * @param arrow the other mass, kg
   * @param bound m/s
   */
  public double chance(Belief speed, Mass shot, double arrow, double bound) {
    double least = supposed.least().siDouble();
    double width = supposed.most().siDouble() - least;
    double now = shot.siDouble();
    return IntStream.range(0, CELLS)
        .mapToDouble(i -> least + (i + 0.5) / CELLS * width)
        .map(k -> speed.chanceUpTo(bound * Math.sqrt((arrow + k) / (now + k))))
        .average()
        .orElseThrow();
  }

  /**
   * From the arrow mass that is perhaps enough to the one that is enough with this confidence, kg,
   * to bring the speed to a limit or below.
   *
   * @param speed of the arrow that was shot, m/s
   * @param shot its mass
   * @param confidence one-sided, at least 0.5 and less than 1; the low end is enough with one less
   *     this confidence
   */
  public Interval arrowFor(Belief speed, Mass shot, Speed limit, double confidence) {
    double bound = limit.siDouble();
    double heavy = shot.siDouble();
    while (chance(speed, shot, heavy, bound) < confidence) {
      heavy *= 2;
    }
    double reached = heavy;
    return new Interval(
        Mixture.least(m -> chance(speed, shot, m, bound), 1 - confidence, heavy * 1e-3, reached),
        Mixture.least(m -> chance(speed, shot, m, bound), confidence, heavy * 1e-3, reached));
  }
}
