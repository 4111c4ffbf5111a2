package lanewarden.rules;

import java.util.List;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * The middle of a row of readings of which some are still outstanding.
 *
 * <p>The median only grows when a reading grows. So it is known to be within when it is with every
 * outstanding reading faster than all others, and over when it is with every one slower.
 */
final class MiddleReadings {
  private final List<Speed> sorted;
  private final Bound bound;
  private final int outstanding;

  /** Places of the middle two, counted from 0 at the slowest; the same for an odd number. */
  private final int lower;

  private final int upper;

  MiddleReadings(List<Speed> readings, int counted, Bound bound) {
    this.sorted = readings.stream().sorted().toList();
    this.bound = bound;
    this.outstanding = counted - readings.size();
    this.lower = (counted - 1) / 2;
    this.upper = counted / 2;
  }

  Verdict verdict() {
    if (isWithin(0)) {
      return bound.verdict(true, fact(Because.MEDIAN_AT_MOST, 0));
    }
    if (isOver(0)) {
      return bound.verdict(false, fact(Because.MEDIAN_AT_LEAST, outstanding));
    }
    int more = 1;
    while (!isWithin(more) && !isOver(more)) {
      more++;
    }
    return Counting.moreReadings(more);
  }

  /** Whether the median is within if {@code slow} outstanding readings are slower than all. */
  private boolean isWithin(int slow) {
    boolean fastInTheMiddle = upper - slow >= sorted.size();
    boolean slowInTheMiddle = lower - slow < 0;
    return !fastInTheMiddle && (slowInTheMiddle || bound.admits(middle(slow)));
  }

  /** Whether the median is over if {@code fast} outstanding readings are faster than all. */
  private boolean isOver(int fast) {
    int slow = outstanding - fast;
    boolean fastInTheMiddle = upper - slow >= sorted.size();
    boolean slowInTheMiddle = lower - slow < 0;
    return !slowInTheMiddle && (fastInTheMiddle || !bound.admits(middle(slow)));
  }

  /** The median with {@code slow} outstanding readings before the known ones, the rest behind. */
  private MeanSpeed middle(int slow) {
    return MeanSpeed.of(List.of(sorted.get(lower - slow), sorted.get(upper - slow)));
  }

  private Sentence fact(Because side, int slow) {
    return Sentence.of(outstanding == 0 ? Because.MEDIAN : side, bound.show(middle(slow)));
  }
}
