package lanewarden.bench;

import static lanewarden.metrology.UncertaintyBudget.Evaluation.TYPE_A;
import static lanewarden.metrology.UncertaintyBudget.Evaluation.TYPE_B;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanewarden.metrology.DecidingFigure;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.NextFigure;
import lanewarden.metrology.Spread;
import lanewarden.metrology.UncertaintyBudget;
import lanewarden.metrology.UncertaintyBudget.Influence;
import lanewarden.quantity.Speed;

/**
 * How well some readings tell a speed: by their scatter, and by what the instrument adds.
 *
 * @param readings of one bow and arrow, at least one
 * @param instrument standard uncertainty of a reading; where it is not stated, the step of the last
 *     digit counts, and the instrument is taken to be right otherwise
 */
public record ShotScatter(List<Speed> readings, Optional<Speed> instrument) {

  /** The scatter of an archer's arrows where too few were shot to tell it (common practice). */
  public static final String USUAL = "2 ft/s";

  /** So few readings tell a scatter, if not well: Student's factor is 2.92 at 95 %, one-sided. */
  private static final int ENOUGH = 3;

  /**
   * @throws IllegalArgumentException if there is no reading
   */
  public ShotScatter {
    readings = List.copyOf(readings);
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("no scatter of no readings");
    }
  }

  /** The mean speed, m/s: scatter averages out, what the instrument adds does not. */
  public Estimate mean() {
    UncertaintyBudget budget = UncertaintyBudget.of(List.of(scatter(), instrumental()));
    return new Estimate(Spread.of(readings).mean(), budget.combined(), budget.effectiveDegrees());
  }

  /**
   * What to expect of the deciding figure of further readings. The step of the last digit counts in
   * their scatter: a few that are alike by chance do not seem to have none.
   *
   * @param mean of the readings as they are compared, m/s
   */
  public NextFigure next(double mean, DecidingFigure figure) {
    return new NextFigure(
        mean,
        Math.hypot(deviation(), resolution()),
        degrees(),
        readings.size(),
        instrumental().standard(),
        figure);
  }

  private Influence scatter() {
    return new Influence(
        "scatter",
        deviation() / Math.sqrt(readings.size()),
        degrees(),
        isTold() ? TYPE_A : TYPE_B,
        isTold() ? "of the shots" : "usual");
  }

  /** Whether there are enough readings to tell a scatter: else the usual one is supposed. */
  public boolean isTold() {
    return readings.size() >= ENOUGH;
  }

  private double deviation() {
    double found = Spread.of(readings).deviation();
    return isTold() ? found : Math.max(found, Speed.parse(USUAL).siDouble());
  }

  private double degrees() {
    return isTold() ? readings.size() - 1.0 : Double.POSITIVE_INFINITY;
  }

  private Influence instrumental() {
    return new Influence(
        "instrument",
        instrument.map(Speed::siDouble).orElseGet(this::resolution),
        Double.POSITIVE_INFINITY,
        TYPE_B,
        instrument.isPresent() ? "stated" : "last digit");
  }

  /** Of the coarsest reading. */
  private double resolution() {
    return readings.stream()
        .map(ShotScatter::step)
        .max(Comparator.naturalOrder())
        .map(step -> UncertaintyBudget.resolution(step.doubleValue()))
        .orElseThrow();
  }

  /** One in the last place as written, m/s. */
  private static BigDecimal step(Speed reading) {
    return BigDecimal.ONE
        .scaleByPowerOfTen(-reading.value().scale())
        .multiply(reading.unit().inSi());
  }
}
