package lanewarden.metrology;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * What is believed of a figure where each of several suppositions, of known weight, gives its own
 * estimate of it (the law of total probability).
 *
 * @param parts at least one, their weights summing to 1
 */
public record Mixture(List<Mixture.Part> parts) implements Belief {
  private static final int HALVINGS = 50;

  /** As far out as any question goes: no probability beyond is told from none. */
  private static final double FAR = 1e-9;

  /**
   * The figure under one supposition.
   *
   * @param weight probability of the supposition
   */
  public record Part(double weight, Estimate estimate) {}

  /**
   * @throws IllegalArgumentException if there is no part or the weights do not sum to 1
   */
  public Mixture {
    parts = List.copyOf(parts);
    double sum = parts.stream().mapToDouble(Part::weight).sum();
    if (!(Math.abs(sum - 1) < 1e-9)) {
      throw new IllegalArgumentException("the weights of a mixture sum to 1, not to " + sum);
    }
  }

  /** Of one supposition alone. */
  public static Mixture of(Estimate estimate) {
    return new Mixture(List.of(new Part(1, estimate)));
  }

  @Override
  public double chanceUpTo(double bound) {
    return parts.stream().mapToDouble(p -> p.weight() * p.estimate().chanceUpTo(bound)).sum();
  }

  /** The middle of what is believed: each estimate with its weight. */
  public double mean() {
    return parts.stream().mapToDouble(p -> p.weight() * p.estimate().value()).sum();
  }

  /**
   * From where to where the true value lies, as likely below as above.
   *
   * @param confidence two-sided, more than 0 and less than 1, as 0.95
   */
  public Interval interval(double confidence) {
    return new Interval(quantile((1 - confidence) / 2), quantile((1 + confidence) / 2));
  }

  /**
   * The least value that the true one does not exceed with this probability.
   *
   * @param probability more than 0 and less than 1
   */
  public double quantile(double probability) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Part part : parts) {
      Interval reach = part.estimate().interval(1 - FAR);
      low = Math.min(low, reach.low());
      high = Math.max(high, reach.high());
    }
    return least(this::chanceUpTo, probability, low, high);
  }

  /**
   * The least argument at which a function that never falls reaches a level, by halving.
   *
   * @param from where it is looked for; itself where the function is there already
   * @param to where it has reached the level
   */
  public static double least(DoubleUnaryOperator rising, double level, double from, double to) {
    if (rising.applyAsDouble(from) >= level) {
      return from;
    }
    double below = from;
    double reached = to;
    for (int i = 0; i < HALVINGS && below < reached; i++) {
      double middle = below + (reached - below) / 2;
      if (rising.applyAsDouble(middle) >= level) {
        reached = middle;
      } else {
        below = middle;
      }
    }
    return reached;
  }
}
