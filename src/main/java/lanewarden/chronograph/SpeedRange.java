package lanewarden.chronograph;

import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * The speeds that are plausible at all; anything outside is a misread, not an arrow.
 *
 * @param least the slowest plausible speed, itself included
 * @param most the fastest plausible speed, itself included
 */
public record SpeedRange(Speed least, Speed most) {
  /**
   * @throws QuantityException if the range is empty
   */
  public SpeedRange {
    if (!most.isMoreThan(least)) {
      throw new QuantityException(
          "more than the least plausible speed, " + least, most.toString(), "raise it");
    }
  }

  /** Whether the speed is from least to most; exact across units. */
  public boolean holds(Speed speed) {
    return least.isAtMost(speed) && speed.isAtMost(most);
  }

  /** The range in words, in another unit and rounded: for display only. */
  String in(SpeedUnit unit, int decimals) {
    return in(least, unit, decimals) + " to " + in(most, unit, decimals);
  }

  private static Speed in(Speed end, SpeedUnit unit, int decimals) {
    return end.unit() == unit ? end : end.to(unit, decimals);
  }

  /** For example {@code 60 ft/s to 500 ft/s}. */
  @Override
  public String toString() {
    return least + " to " + most;
  }
}
