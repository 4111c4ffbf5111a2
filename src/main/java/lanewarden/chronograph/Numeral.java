package lanewarden.chronograph;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A number as instruments write it: the forms NR1, NR2 and NR3 of IEEE 488.2.
 *
 * <p>The values that SCPI-99 reserves (9.9E37 and −9.9E37 for the infinities, 9.91E37 for not a
 * number) look like ordinary numbers and are told apart here, so that they never become a speed.
 */
sealed interface Numeral {
  /** An ordinary number, exact. */
  record Finite(BigDecimal value) implements Numeral {}

  /** Beyond what the instrument can measure. */
  record Infinite() implements Numeral {}

  /** No measurement, or no number at all. */
  record Absent() implements Numeral {}

  /** Reads one number; what is no number is {@link Absent}. Never throws. */
  static Numeral of(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    if (Forms.INFINITIES.contains(upper)) {
      return new Infinite();
    }
    if (!Forms.NUMBER.matcher(text).matches()) {
      return new Absent();
    }
    BigDecimal value = new BigDecimal(text);
    BigDecimal magnitude = value.abs();
    if (magnitude.compareTo(Forms.SCPI_NOT_A_NUMBER) == 0) {
      return new Absent();
    }
    if (magnitude.compareTo(Forms.SCPI_INFINITY) == 0) {
      return new Infinite();
    }
    return new Finite(value.scale() < 0 ? value.setScale(0) : value);
  }

  /** The written forms. */
  final class Forms {
    private static final Set<String> INFINITIES =
        Set.of("INF", "+INF", "-INF", "NINF", "INFINITY", "+INFINITY", "-INFINITY");
    // Possessive, and three digits of exponent at most: neither matching nor arithmetic can be slow
    private static final Pattern NUMBER =
        Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?|\\.[0-9]++)(?:[eE][+-]?[0-9]{1,3})?");
    private static final BigDecimal SCPI_INFINITY = new BigDecimal("9.9E37");
    private static final BigDecimal SCPI_NOT_A_NUMBER = new BigDecimal("9.91E37");

    private Forms() {}
  }
}
