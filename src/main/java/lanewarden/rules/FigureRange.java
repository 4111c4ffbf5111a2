package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Speed;

/**
 * Between which bounds the figure that decides lies, with readings of any speed still outstanding.
 *
 * @param least the least it can still become; empty where it can be anything
 * @param most the most it can still become; empty where it can be anything
 */
record FigureRange(Optional<MeanSpeed> least, Optional<MeanSpeed> most) {

  /** The mean: known when all readings are in. */
  static FigureRange mean(List<Speed> readings, int counted) {
    Optional<MeanSpeed> mean =
        readings.size() < counted ? Optional.empty() : Optional.of(MeanSpeed.of(readings));
    return new FigureRange(mean, mean);
  }

  /**
   * The mean of two readings by their places in order of speed; the same place twice is a reading.
   *
   * @param lower counted from 1 at the slowest
   * @param upper the same or the next place
   */
  static FigureRange places(List<Speed> readings, int counted, int lower, int upper) {
    List<Speed> sorted = readings.stream().sorted().toList();
    int outstanding = counted - readings.size();
    return new FigureRange(
        middle(sorted, lower - outstanding, upper - outstanding), middle(sorted, lower, upper));
  }

  private static Optional<MeanSpeed> middle(List<Speed> sorted, int lower, int upper) {
    return lower < 1 || upper > sorted.size()
        ? Optional.empty()
        : Optional.of(MeanSpeed.of(List.of(sorted.get(lower - 1), sorted.get(upper - 1))));
  }

  /** The least it can become, for a figure that is known to be over. */
  MeanSpeed atLeast() {
    return least.orElseThrow(() -> new IllegalStateException("over, but by nobody knows what"));
  }
}
