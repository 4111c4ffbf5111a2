package lanewarden.chronograph;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.QuantityException;

/** How the times of clocks and gates are written: a number and ns, µs or ms. */
public final class ShortTime {
  private static final Pattern WRITTEN =
      Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,9})?)\\s*([a-zµμ]{1,2})");
  // The micro sign and the Greek letter look alike, and "us" is what keyboards have
  private static final Map<String, Integer> DECIMALS =
      Map.of("ns", 9, "µs", 6, "μs", 6, "us", 6, "ms", 3);

  private ShortTime() {}

  /**
   * Reads a time such as {@code 1 µs} or {@code 62.5 ns}; in seconds, exact.
   *
   * @param expected what the text should be, for the fault
   * @throws QuantityException if the text is anything else, or zero
   */
  public static BigDecimal seconds(String text, String expected) {
    Matcher written = WRITTEN.matcher(text.strip());
    Integer decimals = written.matches() ? DECIMALS.get(written.group(2)) : null;
    BigDecimal seconds =
        decimals == null
            ? BigDecimal.ZERO
            : new BigDecimal(written.group(1)).movePointLeft(decimals);
    if (seconds.signum() == 0) {
      throw new QuantityException(
          expected, "\"" + text + "\"", "write a number above zero, then ns, µs or ms");
    }
    return seconds;
  }
}
