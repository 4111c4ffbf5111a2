package lanewarden.metrology;

import java.util.List;
import lanewarden.metrology.UncertaintyBudget.Evaluation;
import lanewarden.metrology.UncertaintyBudget.Influence;
import lanewarden.quantity.Speed;

/**
 * The mean of readings that were taken one like the other, and what is known of it from their
 * scatter and from the step of the display.
 *
 * <p>The rounding of a display is no scatter that a mean makes smaller: where shots are as even as
 * one step, all of them are rounded alike. So the step counts whole beside the scatter of the mean,
 * as the GUM does in its example H.6 (from memory).
 *
 * <p>Two or three readings are often alike by chance, and then seem never to scatter. Whoever knows
 * how little is possible says so, and no mean is taken to be better known than that allows.
 *
 * @param spread of the readings
 * @param step of the display, m/s, zero or more
 * @param least scatter that counts where the readings show less, m/s, zero or more
 */
public record SampleMean(Spread spread, double step, double least) {
  /** Of fewer readings nothing says how far they scatter. */
  public static final int FEWEST = 2;

  /**
   * @throws IllegalArgumentException if the step or the least scatter makes no sense
   */
  public SampleMean {
    Figures.requireNotNegative(step, "the step of a display, in m/s,");
    Figures.requireNotNegative(least, "the least scatter, in m/s,");
  }

  /** Of at least one reading. */
  public static SampleMean of(List<Speed> readings, double step, double least) {
    return new SampleMean(Spread.of(readings), step, least);
  }

  /** Whether there are enough readings to say how far the mean may be off. */
  public boolean hasInterval() {
    return spread.count() >= FEWEST;
  }

  /**
   * What makes the mean uncertain, m/s.
   *
   * @throws IllegalArgumentException if there are too few readings
   */
  public UncertaintyBudget budget() {
    return UncertaintyBudget.of(influences());
  }

  List<Influence> influences() {
    Figures.requireAtLeast(FEWEST, spread.count(), "the readings of a mean with an interval");
    return List.of(
        new Influence(
            "scatter",
            Math.max(least, spread.deviation()) / Math.sqrt(spread.count()),
            spread.count() - 1,
            Evaluation.TYPE_A,
            "standard deviation of " + spread.count() + " readings by the root of their number"),
        new Influence(
            "resolution",
            UncertaintyBudget.resolution(step),
            Double.POSITIVE_INFINITY,
            Evaluation.TYPE_B,
            "step of the display by √12"));
  }

  /**
   * The mean in m/s, with the degrees of freedom of Welch and Satterthwaite.
   *
   * @throws IllegalArgumentException if there are too few readings
   */
  public Estimate estimate() {
    UncertaintyBudget budget = budget();
    return new Estimate(spread.mean(), budget.combined(), budget.effectiveDegrees());
  }
}
