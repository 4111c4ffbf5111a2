package lanewarden.metrology;

/**
 * From where to where a figure lies with a stated confidence, both ends in the unit of the figure.
 *
 * @param low end
 * @param high end, not less than {@code low}
 */
public record Interval(double low, double high) {
  /**
   * @throws IllegalArgumentException if the ends are no numbers or the wrong way round
   */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("no interval from " + low + " to " + high);
    }
  }

  /** From end to end. */
  public double width() {
    return high - low;
  }

  /** Whether a value lies in it, an end of it included. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
