package lanewarden.metrology;

import java.util.List;

/**
 * What makes one result uncertain, influence by influence, after the GUM (JCGM 100:2008).
 *
 * <p>The influences are independent of each other, and each is already in the unit of the result
 * (its sensitivity is in it), m/s for a speed.
 *
 * @param influences at least one
 */
public record UncertaintyBudget(List<UncertaintyBudget.Influence> influences) {

  /** How an influence was evaluated (GUM 4.2 and 4.3). */
  public enum Evaluation {
    /** From repeated readings. */
    TYPE_A,
    /** From anything else: a maker's statement, a limit, a resolution. */
    TYPE_B
  }

  /**
   * One influence on the result.
   *
   * @param name for a line of the budget
   * @param standard standard uncertainty, in the unit of the result (m/s), zero or more
   * @param degrees of freedom, one or more; infinite where the standard uncertainty is taken as
   *     known
   * @param how it was evaluated
   * @param words where the figure comes from, for a person
   */
  public record Influence(
      String name, double standard, double degrees, Evaluation how, String words) {
    /**
     * @throws IllegalArgumentException if a figure makes no sense
     */
    public Influence {
      Figures.requireNotNegative(standard, "the standard uncertainty of " + name + ", in m/s,");
      if (!(degrees >= 1)) {
        throw new IllegalArgumentException(
            "the degrees of freedom of " + name + " must be 1 or more, not " + degrees);
      }
    }
  }

  /**
   * @throws IllegalArgumentException if there is no influence
   */
  public UncertaintyBudget {
    if (influences.isEmpty()) {
      throw new IllegalArgumentException("a budget needs at least one influence");
    }
    influences = List.copyOf(influences);
  }

  /** A budget of these influences. */
  public static UncertaintyBudget of(List<Influence> influences) {
    return new UncertaintyBudget(influences);
  }

  /** Combined standard uncertainty, m/s: the root of the sum of squares (GUM 5.1.2). */
  public double combined() {
    return Math.sqrt(influences.stream().mapToDouble(i -> i.standard() * i.standard()).sum());
  }

  /**
   * Effective degrees of freedom by Welch and Satterthwaite (GUM G.4.1), not rounded; infinite
   * where no influence has finitely many.
   */
  public double effectiveDegrees() {
    double combined = combined();
    if (combined == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double sum =
        influences.stream()
            .mapToDouble(i -> Math.pow(i.standard() / combined, 4) / i.degrees())
            .sum();
    return 1 / sum;
  }

  /**
   * The whole degrees of freedom with which the coverage factor is taken.
   *
   * <p>GUM G.6.4 asks for the next lower whole number, and its own example in G.4.1 takes 19 for a
   * formula that gives 18.9987. Both hold here: to one decimal first, as the GUM prints them, then
   * cut.
   */
  public double wholeDegrees() {
    double effective = effectiveDegrees();
    return effective >= 1e9 ? Double.POSITIVE_INFINITY : Math.floor(tenths(effective));
  }

  private static double tenths(double value) {
    return Math.rint(value * 10) / 10;
  }

  /**
   * Coverage factor by Student's t for {@link #wholeDegrees} (GUM G.3.2).
   *
   * @param level coverage probability, two-sided, more than 0 and less than 1, as 0.95
   */
  public double coverageFactor(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("a level must lie between 0 and 1, not " + level);
    }
    return Student.exceeded((1 - level) / 2, wholeDegrees());
  }

  /** Expanded uncertainty at a coverage probability, m/s: factor times combined. */
  public double expanded(double level) {
    return coverageFactor(level) * combined();
  }

  /** Standard uncertainty of a value anywhere within ±a: a/√3 (GUM 4.3.7; from memory). */
  public static double rectangular(double a) {
    return a / Math.sqrt(3);
  }

  /** Standard uncertainty of a display that steps by δ: δ/√12 (GUM F.2.2.1; from memory). */
  public static double resolution(double step) {
    return step / Math.sqrt(12);
  }

  /** Standard uncertainty of a value within ±a that is likelier at the middle: a/√6 (GUM 4.3.9). */
  public static double triangular(double a) {
    return a / Math.sqrt(6);
  }

  /**
   * Standard uncertainty behind a stated one: U/k (GUM 4.3.3).
   *
   * @param coverage the factor k it was stated with, more than zero
   */
  public static double stated(double expanded, double coverage) {
    Figures.requirePositive(coverage, "a coverage factor");
    return expanded / coverage;
  }
}
