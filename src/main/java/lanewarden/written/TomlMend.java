package lanewarden.written;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.Sentence;

/** A syntax fault and its mend in plain words, by what the TOML parser says of it. */
final class TomlMend {

  private static final Pattern NO_SUCH_DATE =
      Pattern.compile(
          "Invalid date '(?<month>[A-Za-z]+) (?<day>[0-9]+)'(?: as '(?<year>[0-9]+)' .*)?");
  private static final Pattern CONTROL_CHARACTER =
      Pattern.compile("Unexpected '\\\\u00[01].'.*", Pattern.DOTALL);

  private TomlMend() {}

  /** What the parser found, as a person would say it. */
  static Sentence found(String message) {
    Matcher date = NO_SUCH_DATE.matcher(message);
    if (!date.matches()) {
      return message.startsWith("Invalid month (")
          ? Sentence.of(TomlTold.NO_MONTH)
          : message.startsWith("Invalid day (")
              ? Sentence.of(TomlTold.NO_DAY)
              : Sentence.verbatim(message);
    }
    String month = date.group("month").toLowerCase(Locale.ROOT);
    String name = month.substring(0, 1).toUpperCase(Locale.ROOT) + month.substring(1);
    String year = date.group("year") == null ? "" : " " + date.group("year");
    return Sentence.of(TomlTold.NO_SUCH_DAY, date.group("day") + " " + name + year);
  }

  static Sentence of(String message) {
    if (message.contains("previously defined")) {
      return Sentence.of(TomlTold.KEEP_ONE);
    }
    if (message.contains("too large") || message.contains("too small")) {
      return Sentence.of(TomlTold.SMALLER);
    }
    if (message.startsWith("Invalid date")
        || message.startsWith("Invalid year")
        || message.startsWith("Invalid month")
        || message.startsWith("Invalid day")) {
      return Sentence.of(TomlTold.REAL_DATE);
    }
    if (message.contains("escape sequence")) {
      return Sentence.of(TomlTold.CHARACTER);
    }
    if (CONTROL_CHARACTER.matcher(message).matches()) {
      return Sentence.of(TomlTold.CONTROL);
    }
    if (message.contains("expected \" or a character")
        || message.contains("expected ' or a character")) {
      return Sentence.of(TomlTold.CLOSE_TEXT);
    }
    if (message.contains("expected ],")) {
      return Sentence.of(TomlTold.COMMA_BETWEEN);
    }
    if (message.startsWith("Unexpected ',', expected a newline")) {
      return Sentence.of(TomlTold.COMMA_OUT);
    }
    return Sentence.of(TomlTold.KEY_VALUE);
  }
}
