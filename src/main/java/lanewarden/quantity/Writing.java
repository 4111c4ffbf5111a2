package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How a quantity is written: a plain decimal, a space if one likes, a unit. */
final class Writing {

  /** Long enough for any measurement, short enough that no text can make arithmetic slow. */
  private static final int LONGEST = 40;

  private static final Pattern DECIMAL = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*(.*)");

  private Writing() {}

  /**
   * Reads one quantity.
   *
   * @param example what messages show, for example {@code a speed such as "300 ft/s"}
   * @param unitIfNone the unit where the text has none, or null if a unit must be written
   * @throws QuantityException if the text is no plain decimal with a known unit
   */
  static <U extends Enum<U> & Unit, Q> Q read(
      String text,
      Sentence example,
      Class<U> units,
      @Nullable U unitIfNone,
      BiFunction<BigDecimal, U, Q> make) {
    String trimmed = text.strip();
    Matcher decimal = DECIMAL.matcher(trimmed);
    if (trimmed.length() > LONGEST || !decimal.matches()) {
      throw new QuantityException(
          example,
          quoted(trimmed),
          Slip.mendOf(trimmed).orElse(Sentence.of(FigureTold.DIGITS_THEN_UNIT)));
    }
    String unitText = decimal.group(2);
    if (unitText.isEmpty() && unitIfNone != null) {
      return make.apply(new BigDecimal(decimal.group(1)), unitIfNone);
    }
    for (U unit : units.getEnumConstants()) {
      if (unit.spellings().contains(unitText)) {
        return make.apply(new BigDecimal(decimal.group(1)), unit);
      }
    }
    throw new QuantityException(
        example,
        quoted(trimmed),
        Slip.mendOf(trimmed)
            .or(() -> near(decimal.group(1), unitText, units))
            .orElse(
                Sentence.of(
                    unitText.isEmpty() ? FigureTold.ADD_UNIT : FigureTold.USE_UNIT,
                    symbols(units))));
  }

  /** The same with the unit's own spelling, where only capitals, an s or a dot are wrong. */
  private static <U extends Enum<U> & Unit> Optional<Sentence> near(
      String digits, String unitText, Class<U> units) {
    return Arrays.stream(units.getEnumConstants())
        .filter(unit -> unit.spellings().stream().anyMatch(known -> isNear(known, unitText)))
        .map(unit -> Sentence.of(FigureTold.WRITE, digits + " " + unit.symbol()))
        .findFirst();
  }

  private static boolean isNear(String known, String unitText) {
    String small = unitText.toLowerCase(Locale.ROOT);
    String lower = known.toLowerCase(Locale.ROOT);
    return small.equals(lower) || small.equals(lower + "s") || small.equals(lower + ".");
  }

  /**
   * Reads digits without a unit.
   *
   * @throws QuantityException if the text is no plain decimal
   */
  static BigDecimal decimal(String digits, String kind) {
    Matcher decimal = DECIMAL.matcher(digits);
    if (digits.length() > LONGEST || !decimal.matches() || !decimal.group(2).isEmpty()) {
      throw new QuantityException(
          kind + " in digits such as \"300.1\"",
          quoted(digits),
          "write digits with a decimal point");
    }
    return new BigDecimal(digits.strip());
  }

  /** A number from outside that must not be NaN or infinite. */
  static BigDecimal finite(double value) {
    if (!Double.isFinite(value)) {
      throw new QuantityException(
          "a finite number", Double.toString(value), "give a measured value");
    }
    return BigDecimal.valueOf(value);
  }

  /** The text in quotes, cut where it is too long to show. */
  static String quoted(String text) {
    return "\"" + (text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text) + "\"";
  }

  private static <U extends Enum<U> & Unit> String symbols(Class<U> units) {
    return Arrays.stream(units.getEnumConstants())
        .map(Unit::symbol)
        .collect(Collectors.joining(", "));
  }
}
