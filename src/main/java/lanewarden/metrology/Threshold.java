package lanewarden.metrology;

/**
 * The fastest speed that is within: limit plus tolerance, after whatever rounding the rule asks.
 *
 * @param speed m/s, more than zero
 * @param equalIsWithin true for "at most", false for "below"; it matters only where readings are
 *     rounded and can so meet the threshold exactly
 */
public record Threshold(double speed, boolean equalIsWithin) {
  /**
   * @throws IllegalArgumentException if the speed is no positive number
   */
  public Threshold {
    Figures.requirePositive(speed, "the threshold, in m/s,");
  }
}
