package lanewarden.metrology;

/**
 * What happens to each reading before it decides.
 *
 * @param way how it is rounded
 * @param step to whole multiples of what, m/s; 0 and only 0 where it is not rounded
 */
public record ReadingRounding(Way way, double step) {

  /** Readings decide as they come. */
  public static final ReadingRounding NONE = new ReadingRounding(Way.NONE, 0);

  /** How a reading is rounded. */
  public enum Way {
    /** Not at all. */
    NONE,
    /** To the nearest multiple of the step, half a step up. */
    NEAREST,
    /** To the multiple of the step below. */
    DOWN
  }

  /**
   * @throws IllegalArgumentException if way and step contradict each other
   */
  public ReadingRounding {
    if (way == Way.NONE && step != 0) {
      throw new IllegalArgumentException(
          "readings that are not rounded have a step of 0, not " + step);
    }
    if (way != Way.NONE) {
      Figures.requirePositive(step, "the step readings are rounded to, in m/s,");
    }
  }

  /** Whether readings are rounded at all. */
  public boolean rounds() {
    return way != Way.NONE;
  }
}
