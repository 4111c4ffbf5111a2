package lanewarden.rules;

import java.util.List;
import java.util.function.Function;
import lanewarden.quantity.Speed;

/**
 * The readings sorted into those within and those over, each in the order taken.
 *
 * @param all every reading
 */
record Counting(List<Speed> all, List<Speed> within, List<Speed> over, AllowedSpeed allowed) {

  static Counting of(List<Speed> readings, AllowedSpeed allowed) {
    return new Counting(
        readings,
        readings.stream().filter(allowed::admits).toList(),
        readings.stream().filter(reading -> !allowed.admits(reading)).toList(),
        allowed);
  }

  /**
   * The verdict where {@code needed} of {@code counted} readings must be within: it falls when so
   * many are, or when so many are over that they can no longer be.
   */
  Verdict decide(
      int needed,
      int counted,
      Function<Counting, String> withinFact,
      Function<Counting, String> overFact) {
    int missingWithin = needed - within.size();
    int missingOver = counted - needed + 1 - over.size();
    if (missingWithin <= 0) {
      return allowed.verdict(true, withinFact.apply(this));
    }
    if (missingOver <= 0) {
      return allowed.verdict(false, overFact.apply(this));
    }
    return moreReadings(Math.min(missingWithin, missingOver));
  }

  /** A reading as it is shown beside the allowed speed. */
  String show(Speed reading) {
    return Wording.reading(reading, allowed.speed());
  }

  static Verdict moreReadings(int atLeast) {
    return new Verdict.NotDecided(new Missing.MoreReadings(atLeast));
  }
}
