package lanewarden.metrology;

/**
 * The figure of a check's readings that is held against the threshold.
 *
 * <p>Made by the named methods, which bring two ways of saying the same thing to one form.
 */
public sealed interface DecidingFigure {

  /** More counted readings than any check will have; it keeps the arithmetic far from overflow. */
  int MOST_READINGS = 100;

  /** How many readings count, one or more. */
  int readings();

  /**
   * The arithmetic mean, known only when all readings are in.
   *
   * @param readings two or more
   */
  record Mean(int readings) implements DecidingFigure {
    /**
     * @throws IllegalArgumentException if there are fewer than two readings, or far too many
     */
    public Mean {
      requireReadings(readings, 2, "a mean");
    }
  }

  /**
   * The reading in the given place, counted from the slowest: within when so many are within.
   *
   * @param place 1 for the slowest, {@code readings} for the fastest
   */
  record Ranked(int place, int readings) implements DecidingFigure {
    /**
     * @throws IllegalArgumentException if there is no such place
     */
    public Ranked {
      requireReadings(readings, 1, "a ranked reading");
      if (place < 1 || place > readings) {
        throw new IllegalArgumentException(
            "of " + readings + " readings none is in place " + place + "; count from 1");
      }
    }
  }

  /**
   * The mean of the middle two, which is the median of an even number of readings.
   *
   * @param readings even, four or more: of two readings it is their mean
   */
  record MiddlePair(int readings) implements DecidingFigure {
    /**
     * @throws IllegalArgumentException if the readings have no middle two, or are their own
     */
    public MiddlePair {
      requireReadings(readings, 4, "a middle pair");
      if (readings % 2 != 0) {
        throw new IllegalArgumentException(
            readings + " readings have one in the middle, not two; use median()");
      }
    }
  }

  /** The mean; of a single reading, that reading. */
  static DecidingFigure mean(int readings) {
    return readings == 1 ? new Ranked(1, 1) : new Mean(readings);
  }

  /** The highest reading: one over is enough to fail. */
  static DecidingFigure highest(int readings) {
    return new Ranked(readings, readings);
  }

  /** The median; of an even number of readings, the mean of the middle two. */
  static DecidingFigure median(int readings) {
    if (readings % 2 != 0) {
      return new Ranked((readings + 1) / 2, readings);
    }
    return readings == 2 ? new Mean(2) : new MiddlePair(readings);
  }

  /** So many of the readings must be within. */
  static DecidingFigure withinCount(int needed, int readings) {
    return new Ranked(needed, readings);
  }

  /** One reading within is enough. */
  static DecidingFigure firstWithin(int readings) {
    return new Ranked(1, readings);
  }

  private static void requireReadings(int readings, int least, String what) {
    if (readings < least || readings > MOST_READINGS) {
      throw new IllegalArgumentException(
          what + " needs " + least + " to " + MOST_READINGS + " readings, not " + readings);
    }
  }
}
