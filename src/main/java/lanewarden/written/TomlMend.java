package lanewarden.written;

/** What to do about a syntax fault, by what the TOML parser says of it. */
final class TomlMend {

  private TomlMend() {}

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
      return "write a day that there is, as year-month-day";
    }
    if (message.contains("escape sequence")) {
      return "write the character itself; for a backslash, write two";
    }
    if (message.contains("'\\u0000'")) {
      return "save the file again as plain text with the encoding UTF-8";
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
