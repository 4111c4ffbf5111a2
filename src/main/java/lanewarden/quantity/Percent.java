package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A share in hundredths, as written: {@code 3 %}.
 *
 * @param value the number before the percent sign, not negative
 */
public record Percent(BigDecimal value) implements Comparable<Percent>, Measure {

  private static final Pattern MEANT =
      Pattern.compile(".*(?:%|per ?cent|pct\\.?)", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,12})?)\\s*%");

  /**
   * @throws QuantityException if {@code value} is negative
   */
  public Percent {
    if (value.signum() < 0) {
      throw new QuantityException(
          Sentence.of(FigureTold.PERCENTAGE_NOT_NEGATIVE),
          value.toPlainString() + " %",
          Sentence.of(Slip.MINUS));
    }
  }

  /**
   * Reads a number followed by a percent sign.
   *
   * @throws QuantityException if the text is anything else
   */
  public static Percent parse(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      throw new QuantityException(
          Sentence.of(FigureTold.PERCENTAGE, "3 %"),
          Writing.quoted(text.strip()),
          Slip.mendOf(text).orElse(Sentence.of(FigureTold.THEN_PERCENT)));
    }
    return new Percent(new BigDecimal(written.group(1)));
  }

  /** Whether the text looks as if a percentage was meant, right or wrong. */
  public static boolean isMeantBy(String text) {
    return MEANT.matcher(text.strip()).matches();
  }

  /** By size; 3 % and 3.0 % compare as equal. */
  @Override
  public int compareTo(Percent other) {
    return value.compareTo(other.value);
  }

  /** The share as a fraction of one, exact. */
  public BigDecimal fraction() {
    return value.movePointLeft(2);
  }

  /** For example {@code 3 %}: reads back as an equal value. */
  @Override
  public String toString() {
    return value.toPlainString() + " %";
  }
}
