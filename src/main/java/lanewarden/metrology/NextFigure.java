package lanewarden.metrology;

import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * What some readings let one expect of the deciding figure of as many more as a check counts.
 *
 * <p>Readings are normal about a true speed; of that and of their scatter nothing is known but what
 * the readings tell (predictive distribution with the prior 1/σ, whose bounds hold as often as they
 * say: Seymour Geisser, Predictive Inference, section 2.1; from memory). Less the mean, the figure
 * is then σ(Z/√n + G) + sY: G is that figure of standard normal readings, Z and Y are standard
 * normal, σ is what the χ² distribution makes of the scatter, s is shared. So each of them is taken
 * in by one integral over what is tabled of those before it.
 *
 * @param mean of the readings that were taken, m/s
 * @param scatter standard deviation of single ones, m/s, more than zero
 * @param degrees of freedom of that scatter; infinite where it is taken as known
 * @param taken how many were taken, one or more
 * @param shared standard uncertainty that their mean has besides, m/s, zero or more
 * @param figure that decides
 */
public record NextFigure(
    double mean, double scatter, double degrees, int taken, double shared, DecidingFigure figure) {

  /** A scatter beyond is so unlikely that it does not count. */
  private static final double FAR = 1e-6;

  /** A step narrower than the blur by more than this is as good as none. */
  private static final double SHARPEST = 30;

  /**
   * A supposition: the figure is another one, stretched and shifted.
   *
   * @param weight of it
   */
  private record Part(double weight, double shift, double scale) {}

  /**
   * @throws IllegalArgumentException if a figure makes no sense
   */
  public NextFigure {
    Figures.requirePositive(scatter, "the scatter of readings, in m/s,");
    Figures.requireAtLeast(1, taken, "the readings that were taken");
    Figures.requireNotNegative(shared, "the uncertainty that readings share, in m/s,");
    if (!(degrees > 0)) {
      throw new IllegalArgumentException("no scatter has " + degrees + " degrees of freedom");
    }
  }

  /**
   * What is believed of it, in m/s; right to about three decimals, and to 0.002 where what is
   * shared outweighs the scatter by more than thirty times.
   */
  public Belief believed() {
    double narrow = 1 / Math.sqrt(figure.readings());
    double spread = 1 / Math.sqrt(taken);
    double wide = Math.hypot(narrow, spread);
    Belief standard = new TabledBelief(standard(), narrow);
    Belief blurred = new TabledBelief(blurred(standard, spread, narrow), wide);
    Belief scattered = new TabledBelief(scattered(blurred), scatter * wide);
    Belief all =
        shared == 0
            ? scattered
            : new TabledBelief(
                blurred(scattered, shared, scatter * wide), Math.hypot(scatter * wide, shared));
    return bound -> all.chanceUpTo(bound - mean);
  }

  /** Of standard normal readings. */
  private Belief standard() {
    MarginChances chances = MarginChances.of(figure);
    return bound -> Math.abs(bound) < Bell.EDGE ? chances.at(bound).within() : bound < 0 ? 0 : 1;
  }

  /**
   * With a normal error added to the figure.
   *
   * @param by its standard deviation
   * @param narrow over which the chances of the figure change
   */
  private static Belief blurred(Belief belief, double by, double narrow) {
    double steps = Math.min(SHARPEST, by / narrow);
    int bends = 1 + (int) Math.ceil(steps * steps);
    List<Part> parts =
        GaussLegendre.nodes(-Bell.EDGE, Bell.EDGE, bends).stream()
            .map(z -> new Part(z.weight() * Bell.density(z.at()), by * z.at(), 1))
            .toList();
    return bound -> mixed(parts, belief, bound);
  }

  /** Of readings that scatter so, over the logarithms of the scatters that are believed. */
  private Belief scattered(Belief standard) {
    if (Double.isInfinite(degrees)) {
      return bound -> standard.chanceUpTo(bound / scatter);
    }
    ChiSquaredDistribution squares = ChiSquaredDistribution.of(degrees);
    double least = Math.log(degrees / squares.inverseSurvivalProbability(FAR)) / 2;
    double most = Math.log(degrees / squares.inverseCumulativeProbability(FAR)) / 2;
    List<Part> parts =
        GaussLegendre.nodes(least, most, 1 + (int) Math.ceil(2 * degrees)).stream()
            .map(
                log -> {
                  double square = degrees * Math.exp(-2 * log.at());
                  double density = 2 * square * squares.density(square);
                  return new Part(log.weight() * density, 0, scatter * Math.exp(log.at()));
                })
            .toList();
    return bound -> mixed(parts, standard, bound);
  }

  private static double mixed(List<Part> parts, Belief belief, double bound) {
    double sum = 0;
    for (Part part : parts) {
      sum += part.weight() * belief.chanceUpTo((bound - part.shift()) / part.scale());
    }
    return sum;
  }
}
