package lanewarden.station;

import lanewarden.metrology.Deviation;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Between which amounts a figure of the settings can be meant. What lies beyond is a misprint, most
 * often of the unit, and would be signed with the opening of the line.
 */
final class Bounds {
  private static final Percent MOST_SHARE = Percent.parse("10 %");
  private static final Speed MOST_SPEED = Speed.of("30", SpeedUnit.FEET_PER_SECOND);

  private Bounds() {}

  /**
   * The value, if it is neither less nor more than what can be meant.
   *
   * @param text as it was written
   * @throws QuantityException if it is
   */
  static <T extends Comparable<T>> T between(T least, T most, T value, String text) {
    return held(
        value.compareTo(least) >= 0 && value.compareTo(most) <= 0,
        value,
        least + " to " + most,
        text);
  }

  /**
   * The value, if it is no more than what can be meant.
   *
   * @param text as it was written
   * @throws QuantityException if it is more
   */
  static <T extends Comparable<T>> T upTo(T most, T value, String text) {
    return held(value.compareTo(most) <= 0, value, "at most " + most, text);
  }

  /**
   * A share or a speed by which a reading may be off: more than that is no measurement.
   *
   * @throws QuantityException if it is neither, or more than 10 % or 30 ft/s
   */
  static Deviation deviation(String text) {
    Deviation deviation = Deviation.parse(text);
    boolean small =
        deviation instanceof Deviation.Share share
            ? share.percent().compareTo(MOST_SHARE) <= 0
            : ((Deviation.Fixed) deviation).speed().compareTo(MOST_SPEED) <= 0;
    return held(small, deviation, "at most " + MOST_SHARE + " or " + MOST_SPEED, text);
  }

  private static <T> T held(boolean meant, T value, String allowed, String text) {
    if (!meant) {
      throw new QuantityException(
          allowed, "\"" + text + "\"", "check the figure, its decimal point and its unit");
    }
    return value;
  }
}
