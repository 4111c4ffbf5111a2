package lanewarden.chronograph;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The clock by which an instrument counts when an arrow passed its gates.
 *
 * @param tick how long one count lasts, in seconds; more than zero
 * @param range how many counts there are before it begins at zero again; null if it never does
 */
record GateClock(BigDecimal tick, @Nullable BigDecimal range) {
  /** A clock of microseconds that is read before it begins again. */
  static final GateClock MICROSECONDS = new GateClock(new BigDecimal("0.000001"), null);

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /**
   * Reads how long one count lasts, for example {@code 1 µs} or {@code 62.5 ns}; in seconds.
   *
   * @throws lanewarden.quantity.QuantityException if the text is anything else, or zero
   */
  static BigDecimal tick(String text) {
    return ShortTime.seconds(text, "how long one count lasts, such as \"1 µs\"");
  }

  /** Whether the clock can show this count at all. */
  boolean shows(BigDecimal count) {
    return count.signum() >= 0 && (range == null || count.compareTo(range) < 0);
  }

  /**
   * The counts that passed, roll-over undone.
   *
   * @param difference the later count less the earlier, as read off the clock
   * @return zero or less if the later one came first. With a range, half of it or more is taken for
   *     that too, because the clock shows the same for both.
   */
  BigDecimal passed(BigDecimal difference) {
    if (range == null) {
      return difference;
    }
    BigDecimal rest = difference.remainder(range);
    BigDecimal forward = rest.signum() < 0 ? rest.add(range) : rest;
    return forward.multiply(TWO).compareTo(range) < 0 ? forward : forward.subtract(range);
  }

  /** For people: the counts from the least to the most. */
  String counts() {
    return range == null ? "from 0" : "from 0 to " + range.subtract(BigDecimal.ONE).toPlainString();
  }
}
