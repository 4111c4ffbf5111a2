package lanewarden.metrology;

/**
 * How crooked an arrow may fly through the gates.
 *
 * <p>Its way from gate to gate is longer than their spacing by 1/cos θ, so the instrument shows cos
 * θ of the true speed: always too slow, never too fast.
 *
 * @param degrees the largest angle between flight and the line of the gates, 0 to 45
 */
public record Alignment(double degrees) {
  /**
   * @throws IllegalArgumentException if the angle is negative or more than 45 degrees
   */
  public Alignment {
    if (!(degrees >= 0 && degrees <= 45)) {
      throw new IllegalArgumentException(
          "an alignment must be an angle of 0 to 45 degrees, not " + degrees);
    }
  }

  /** The share of the true speed by which the reading is too slow: 1 − cos θ. */
  public double slow() {
    // 2 sin²(θ/2) is the same, and keeps its digits at small angles
    double half = Math.sin(Math.toRadians(degrees) / 2);
    return 2 * half * half;
  }
}
