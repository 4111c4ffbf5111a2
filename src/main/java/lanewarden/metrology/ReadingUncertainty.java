package lanewarden.metrology;

import java.util.List;
import lanewarden.metrology.UncertaintyBudget.Influence;
import lanewarden.quantity.Speed;

/**
 * From what is known of an instrument to the uncertainty of its readings.
 *
 * @param sources whatever is known, at least one
 */
public record ReadingUncertainty(List<ErrorSource> sources) {
  /**
   * @throws IllegalArgumentException if nothing is known: that is no uncertainty of zero
   */
  public ReadingUncertainty {
    if (sources.isEmpty()) {
      throw new IllegalArgumentException(
          "nothing is known of the instrument's errors; state its accuracy or its step at least");
    }
    sources = List.copyOf(sources);
  }

  /** The budget of one reading of this speed. */
  public UncertaintyBudget at(Speed speed) {
    return atMeanOf(1, speed);
  }

  /**
   * The budget of the instrument's part in the mean of several readings: what is new with each
   * reading shrinks with the root of their number, what they share does not.
   *
   * @param readings one or more
   * @param mean of the readings
   */
  public UncertaintyBudget atMeanOf(int readings, Speed mean) {
    Figures.requireAtLeast(1, readings, "the readings of a mean");
    double root = Math.sqrt(readings);
    return UncertaintyBudget.of(
        sources.stream()
            .map(
                s -> {
                  Influence one = s.at(mean.siDouble());
                  return s.isNewWithEachReading() ? divided(one, root) : one;
                })
            .toList());
  }

  private static Influence divided(Influence one, double by) {
    return new Influence(one.name(), one.standard() / by, one.degrees(), one.how(), one.words());
  }
}
