package lanewarden.bow;

import java.util.List;
import lanewarden.metrology.Estimate;

/**
 * Measured arrows under one supposed virtual mass K: each speed times √(m + K) is then the same
 * figure √(2E), of which the weighted mean is taken.
 *
 * @param virtualMass K, kg
 * @param root √(2E); its uncertainty enlarged by the Birge ratio where the speeds differ by more
 *     than their own uncertainties
 * @param logLikelihood of K, up to a constant: with √(2E) of any size alike (its logarithm
 *     rectangular), and the speeds' uncertainties known as well as their degrees of freedom say
 */
record EnergyFit(double virtualMass, Estimate root, double logLikelihood) {

  /**
   * @param degrees of freedom of all speeds together
   */
  static EnergyFit of(List<MeasuredArrow> arrows, double virtualMass, double degrees) {
    double weights = 0;
    double weighted = 0;
    for (MeasuredArrow arrow : arrows) {
      double total = arrow.mass().siDouble() + virtualMass;
      double weight = 1 / (Math.pow(arrow.speed().standard(), 2) * total);
      weights += weight;
      weighted += weight * arrow.speed().value() * Math.sqrt(total);
    }
    double root = weighted / weights;
    double standard = 1 / Math.sqrt(weights);
    double squares = squares(arrows, virtualMass, root);
    int spare = arrows.size() - 1;
    double birge = spare == 0 ? 1 : Math.max(1, Math.sqrt(squares / spare));
    double deviations =
        Double.isInfinite(degrees)
            ? squares / 2
            : (degrees + spare) / 2 * Math.log1p(squares / degrees);
    return new EnergyFit(
        virtualMass,
        new Estimate(root, standard * birge, degrees),
        Math.log(standard / root) - deviations);
  }

  /** Of the speeds' deviations from this energy, each in its own uncertainty. */
  private static double squares(List<MeasuredArrow> arrows, double virtualMass, double root) {
    return arrows.stream()
        .mapToDouble(
            arrow -> {
              double expected = root / Math.sqrt(arrow.mass().siDouble() + virtualMass);
              return (arrow.speed().value() - expected) / arrow.speed().standard();
            })
        .map(off -> off * off)
        .sum();
  }

  /** The mean speed of an arrow of a mass in kg, m/s. */
  Estimate speedOf(double arrow) {
    return root.times(1 / Math.sqrt(arrow + virtualMass));
  }
}
