package lanewarden.metrology;

/**
 * Why two readings of one archer differ, and why all of them may be off together.
 *
 * @param arrows standard deviation of the archer's arrows from one to the next, m/s
 * @param reading standard uncertainty of the instrument that is new with each reading, m/s
 * @param calibration standard uncertainty of the instrument that all readings share, m/s; the same
 *     instrument makes the re-checks, so they share it too
 */
public record Dispersion(double arrows, double reading, double calibration) {
  /**
   * @throws IllegalArgumentException if one of them is negative or no number
   */
  public Dispersion {
    Figures.requireNotNegative(arrows, "the scatter of the arrows, in m/s,");
    Figures.requireNotNegative(reading, "the uncertainty of one reading, in m/s,");
    Figures.requireNotNegative(calibration, "the uncertainty of calibration, in m/s,");
  }

  /** Standard deviation of a reading about the archer's true speed plus calibration error, m/s. */
  public double each() {
    return Math.hypot(arrows, reading);
  }
}
