package lanewarden.rules;

import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Speed;

/**
 * The fastest speed a rule lets pass, with the limit and tolerance it comes from.
 *
 * <p>Its unit, the one the limit is written in, governs: a reading in another unit is compared by
 * exact magnitude and converted only to be shown.
 */
public final class AllowedSpeed {
  private final Speed limit;
  private final Tolerance tolerance;
  private final Speed speed;

  /**
   * @throws IllegalArgumentException if the tolerance is a speed in another unit than the limit
   */
  public AllowedSpeed(Speed limit, Tolerance tolerance) {
    this.limit = limit;
    this.tolerance = tolerance;
    this.speed = tolerance.above(limit);
  }

  /** Limit plus tolerance, exact, in the governing unit. */
  public Speed speed() {
    return speed;
  }

  /** Whether a single reading is at most this speed. */
  public boolean admits(Speed reading) {
    return reading.isAtMost(speed);
  }

  /** Whether a mean is at most this speed. */
  boolean admits(MeanSpeed mean) {
    return !mean.isMoreThan(speed);
  }

  /** Within or over, for a fact about the readings that is one or the other. */
  Verdict verdict(boolean within, String fact) {
    String reason = fact + ", " + inWords();
    return within ? new Verdict.Within(reason) : new Verdict.Over(reason);
  }

  /** A mean in the governing unit, rounded, on the side of this speed where the exact one lies. */
  String show(MeanSpeed mean) {
    return Wording.rounded(
        decimals -> mean.to(speed.unit(), decimals), speed, mean.compareTo(speed));
  }

  /** For example {@code limit 300 ft/s plus 3 % = 309 ft/s}. */
  public String inWords() {
    String written = "limit " + tolerance.inWords(limit);
    return tolerance instanceof Tolerance.None ? written : written + " = " + Wording.plain(speed);
  }
}
