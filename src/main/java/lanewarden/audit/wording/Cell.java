package lanewarden.audit.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lanewarden.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the cells of an exported table, so that no spreadsheet takes one for a formula.
 *
 * <p>A text that could begin one gets an apostrophe in front; so does a text that begins with an
 * apostrophe, so that whoever takes one away in front always has the text as it was. Numbers are
 * written as they are; one below nothing begins with a hyphen and has only digits and a point
 * behind it, which no spreadsheet takes for anything but a number.
 */
public final class Cell {
  /**
   * What begins a formula in one spreadsheet or another, also behind blanks; every control
   * character, which a spreadsheet may swallow; and whatever else is one of these signs in another
   * width or height (its compatibility decomposition, UAX 15).
   */
  private static final Pattern RISKY =
      Pattern.compile(
          "(?s)[\\p{Z}\\p{Cf}]*[=+\\-@\\p{Cc}'\u2212\ufe62\ufe63\ufe66\ufe6b\uff0b\uff0d\uff1d\uff20\ufb29\u207a-\u207c"
              + "\u208a-\u208c].*");

  private Cell() {}

  /** A text of any kind; nothing where there is none. */
  public static String text(@Nullable String text) {
    if (text == null) {
      return "";
    }
    return RISKY.matcher(text).matches() ? "'" + text : text;
  }

  /** A time in UTC, as RFC 3339 writes it. */
  public static String time(Instant at) {
    return at.toString();
  }

  /** Number and unit of a quantity, in two cells; both empty where there is none. */
  public static List<String> quantity(@Nullable Quantity<?, ?> quantity) {
    return quantity == null
        ? List.of("", "")
        : List.of(quantity.value().toPlainString(), quantity.unit().symbol());
  }

  /** A figure with so many decimals; nothing where there is none. */
  public static String number(Optional<Double> figure, int decimals) {
    return figure
        .map(f -> new BigDecimal(f).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString())
        .orElse("");
  }

  /** Several groups of cells, one after the other. */
  public @SafeVarargs static List<String> row(List<String>... groups) {
    List<String> row = new ArrayList<>();
    for (List<String> group : groups) {
      row.addAll(group);
    }
    return row;
  }
}
