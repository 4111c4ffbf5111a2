package lanewarden.metrology;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a rule does to archers of every speed: the chances of each ending of a check against the
 * true speed. Calculated where there is a closed form, else simulated with drawn readings.
 *
 * <p>Not for more than one thread at a time where it is simulated.
 */
public final class OperatingCharacteristic {
  private static final int MOST_POINTS = 10_000;

  private final Optional<ClosedForm> closed;
  private final CheckSimulation simulation;
  private final int archers;
  private final long seed;

  /**
   * @param archers how many are drawn for each speed where there is no closed form, one or more
   * @param seed of the drawn readings: the same seed gives the same figures
   */
  public OperatingCharacteristic(CheckModel model, int archers, long seed) {
    Figures.requireAtLeast(1, archers, "the simulated archers");
    this.closed = ClosedForm.of(model);
    this.simulation = new CheckSimulation(model);
    this.archers = archers;
    this.seed = seed;
  }

  /** Whether the figures are calculated, not simulated. */
  public boolean isCalculated() {
    return closed.isPresent();
  }

  /**
   * The largest standard error that a chance may have from being simulated: that of a share of one
   * half.
   *
   * @param archers how many were drawn for the speed, one or more
   */
  public static double standardError(int archers) {
    Figures.requireAtLeast(1, archers, "the simulated archers");
    return 0.5 / Math.sqrt(archers);
  }

  /**
   * How a check ends for an archer of the given speed.
   *
   * @param trueSpeed the mean speed of the archer's arrows, m/s
   */
  public CurvePoint at(double trueSpeed) {
    return closed
        .map(form -> form.at(trueSpeed))
        .orElseGet(() -> simulation.at(trueSpeed, archers, seed));
  }

  /**
   * A curve over evenly spaced speeds, both ends among them.
   *
   * @param slowest m/s, more than zero
   * @param fastest m/s, more than {@code slowest}
   * @param points two or more
   */
  public List<CurvePoint> curve(double slowest, double fastest, int points) {
    Figures.requirePositive(slowest, "the slowest speed of a curve, in m/s,");
    Figures.requirePositive(fastest - slowest, "what a curve's speeds span, in m/s,");
    if (points < 2 || points > MOST_POINTS) {
      throw new IllegalArgumentException(
          "a curve has 2 to " + MOST_POINTS + " points, not " + points);
    }
    List<CurvePoint> curve = new ArrayList<>(points);
    for (int i = 0; i < points; i++) {
      curve.add(at(slowest + (fastest - slowest) * i / (points - 1)));
    }
    return List.copyOf(curve);
  }

  /**
   * The two numbers that sum up a rule.
   *
   * @param honest a speed at which nobody should fail, m/s; most often the limit
   * @param excess how much faster an archer is who should fail, m/s, more than zero
   */
  public Risks risks(double honest, double excess) {
    Figures.requirePositive(excess, "the excess, in m/s,");
    return new Risks(at(honest).ending().over(), at(honest + excess).ending().within());
  }

  /**
   * How often a rule errs, re-checks included.
   *
   * @param honestFailed probability that the honest archer ends over
   * @param excessPassed probability that the archer with the excess ends within
   */
  public record Risks(double honestFailed, double excessPassed) {}
}
