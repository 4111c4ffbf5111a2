package lanewarden.written;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A syntax fault and its mend in plain words, by what the TOML parser says of it. */
final class TomlMend {

  private static final Pattern NO_SUCH_DATE =
      Pattern.compile(
          "Invalid date '(?<month>[A-Za-z]+) (?<day>[0-9]+)'(?: as '(?<year>[0-9]+)' .*)?");
  private static final Pattern CONTROL_CHARACTER =
      Pattern.compile("Unexpected '\\\\u00[01].'.*", Pattern.DOTALL);

  private TomlMend() {}

  /** What the parser found, as a person would say it. */
  static String found(String message) {
    Matcher date = NO_SUCH_DATE.matcher(message);
    if (!date.matches()) {
      return message.startsWith("Invalid month (")
          ? "a month that is not one of 01 to 12"
          : message.startsWith("Invalid day (") ? "a day that no month has" : message;
    }
    String month = date.group("month").toLowerCase(Locale.ROOT);
    String name = month.substring(0, 1).toUpperCase(Locale.ROOT) + month.substring(1);
    String year = date.group("year") == null ? "" : " " + date.group("year");
    return date.group("day") + " " + name + year + ", a day that there is not";
  }

  static String of(String message) {
    if (message.contains("previously defined")) {
      return "keep one of the two; a further table of a list is written in [[double brackets]]";
    }
    if (message.contains("too large") || message.contains("too small")) {
      return "write a smaller number";
    }
    if (message.startsWith("Invalid date")
        || message.startsWith("Invalid year")
        || message.startsWith("Invalid month")
        || message.startsWith("Invalid day")) {
      return "write a date that exists, as year-month-day such as 2026-03-01";
    }
    if (message.contains("escape sequence")) {
      return "write the character itself; for a backslash, write two";
    }
    if (CONTROL_CHARACTER.matcher(message).matches()) {
      return "take the control character out, or save the file again as plain text in UTF-8";
    }
    if (message.contains("expected \" or a character")
        || message.contains("expected ' or a character")) {
      return "close the text with the quote it begins with, on the same line";
    }
    if (message.contains("expected ],")) {
      return "put a comma between items, and close the list with ]";
    }
    if (message.startsWith("Unexpected ',', expected a newline")) {
      return "take the comma out; decimals are written with a point";
    }
    return "write it as key = value; text stands in double quotes";
  }
}
