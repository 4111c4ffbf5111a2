package lanewarden.rules;

import java.util.List;
import java.util.function.Function;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * The readings sorted into those within and those over, each in the order taken.
 *
 * @param all every reading
 */
record Counting(List<Speed> all, List<Speed> within, List<Speed> over, Bound bound) {

  static Counting of(List<Speed> readings, Bound bound) {
    return new Counting(
        readings,
        readings.stream().filter(bound::admits).toList(),
        readings.stream().filter(reading -> !bound.admits(reading)).toList(),
        bound);
  }

  /**
   * The verdict where {@code needed} of {@code counted} readings must be within: it falls when so
   * many are, or when so many are over that they can no longer be.
   */
  Verdict decide(
      int needed,
      int counted,
      Function<Counting, Sentence> withinFact,
      Function<Counting, Sentence> overFact) {
    int missingWithin = needed - within.size();
    int missingOver = counted - needed + 1 - over.size();
    if (missingWithin <= 0) {
      return bound.verdict(true, withinFact.apply(this));
    }
    if (missingOver <= 0) {
      return bound.verdict(false, overFact.apply(this));
    }
    return moreReadings(Math.min(missingWithin, missingOver));
  }

  /** A reading as it is shown beside the bound. */
  Sentence show(Speed reading) {
    return bound.show(reading);
  }

  /** Several readings, separated by commas. */
  Sentence.Row shown(List<Speed> readings) {
    return new Sentence.Row(", ", readings.stream().map(this::show).toList());
  }

  static Verdict moreReadings(int atLeast) {
    return new Verdict.NotDecided(new Missing.MoreReadings(atLeast));
  }
}
