package lanewarden.bow;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.metrology.StraightLine;
import lanewarden.quantity.Mass;

/**
 * A bow of which the speeds of some weighed arrows are known, and what follows for other arrows.
 *
 * <p>Energy model: ½(m + K)v² = E for every arrow mass m, with the bow's energy E and its virtual
 * mass K, which flies along without being arrow. K is supposed to lie in a range; E is supposed to
 * be of any size alike (its logarithm rectangular), so that one arrow says nothing of K. Two or
 * more arrows do: each K of the range then weighs as likely as it makes the speeds (own algebra).
 * Where the speeds contradict the model by more than their uncertainties, those are enlarged by the
 * Birge ratio.
 *
 * <p>All that is said of an arrow not measured holds for small changes of the same bow: the same
 * draw, nocks, string and archer.
 */
public final class MeasuredBow {

  /** Into so many equal cells the range of K is divided: one grain each of the usual range. */
  private static final int CELLS = 80;

  private final List<MeasuredArrow> arrows;
  private final VirtualMassRange supposed;
  private final double degrees;
  private final List<Supposed> cells;

  /**
   * The bow with the virtual mass of one cell.
   *
   * @param weight of it, all together 1
   */
  private record Supposed(EnergyFit fit, double weight) {}

  private MeasuredBow(List<MeasuredArrow> arrows, VirtualMassRange supposed) {
    this.arrows = List.copyOf(arrows);
    this.supposed = supposed;
    this.degrees = commonDegrees();
    this.cells = weighed();
  }

  /**
   * @param arrows one or more
   * @param supposed of the virtual mass
   * @throws IllegalArgumentException if there is none
   */
  public static MeasuredBow of(List<MeasuredArrow> arrows, VirtualMassRange supposed) {
    if (arrows.isEmpty()) {
      throw new IllegalArgumentException("a bow is measured by one arrow at least");
    }
    return new MeasuredBow(arrows, supposed);
  }

  /**
   * The virtual mass by the speeds alone, kg, without any supposition: K = intercept/slope of the
   * line of 1/v² against m. It may be negative, which no bow is. Empty where all arrows are alike.
   */
  public Optional<Estimate> fittedVirtualMass() {
    if (arrows.stream().map(a -> a.mass().siDouble()).distinct().count() < 2) {
      return Optional.empty();
    }
    StraightLine line = StraightLine.through(arrows.stream().map(MeasuredArrow::linear).toList());
    Estimate zero = line.zero();
    return Optional.of(new Estimate(-zero.value(), zero.standard(), degrees));
  }

  /**
   * Whether the speeds of unlike arrows contradict every bow, by a negative virtual mass: then they
   * differ by noise, and nothing of K is taken from them.
   */
  public boolean isNoise() {
    return fittedVirtualMass().filter(fit -> !(fit.value() >= 0)).isPresent();
  }

  /** What was supposed of the virtual mass. */
  public VirtualMassRange supposed() {
    return supposed;
  }

  /** Of all speeds together, by Welch and Satterthwaite (GUM G.4.1). */
  private double commonDegrees() {
    double sum = arrows.stream().mapToDouble(MeasuredArrow::weight).sum();
    double shares =
        arrows.stream().mapToDouble(a -> Math.pow(a.weight(), 2) / a.speed().degrees()).sum();
    return shares == 0 ? Double.POSITIVE_INFINITY : sum * sum / shares;
  }

  private List<Supposed> weighed() {
    boolean used = fittedVirtualMass().isPresent() && !isNoise();
    List<EnergyFit> fits =
        IntStream.range(0, CELLS)
            .mapToObj(
                i ->
                    EnergyFit.of(arrows, supposed.least().siDouble() + (i + 0.5) * cell(), degrees))
            .toList();
    // Less the greatest: else a range far from what the speeds say makes every weight zero
    double greatest = fits.stream().mapToDouble(EnergyFit::logLikelihood).max().orElseThrow();
    List<Supposed> raw =
        fits.stream()
            .map(fit -> new Supposed(fit, used ? Math.exp(fit.logLikelihood() - greatest) : 1))
            .toList();
    double sum = raw.stream().mapToDouble(Supposed::weight).sum();
    return raw.stream().map(one -> new Supposed(one.fit(), one.weight() / sum)).toList();
  }

  private double cell() {
    return (supposed.most().siDouble() - supposed.least().siDouble()) / CELLS;
  }

  /**
   * From where to where the virtual mass lies, kg: what was supposed, and what the speeds say.
   *
   * @param confidence two-sided, more than 0 and less than 1
   */
  public Interval virtualMass(double confidence) {
    return new Interval(massBelow((1 - confidence) / 2), massBelow((1 + confidence) / 2));
  }

  private double massBelow(double probability) {
    double sum = 0;
    for (Supposed one : cells) {
      if (sum + one.weight() >= probability) {
        return one.fit().virtualMass() + cell() * ((probability - sum) / one.weight() - 0.5);
      }
      sum += one.weight();
    }
    return supposed.most().siDouble();
  }

  /** The mean speed of an arrow of this mass, m/s: measured or not, what is believed of it. */
  public Mixture speedOf(Mass arrow) {
    return new Mixture(
        cells.stream()
            .map(one -> new Mixture.Part(one.weight(), one.fit().speedOf(arrow.siDouble())))
            .toList());
  }
}
