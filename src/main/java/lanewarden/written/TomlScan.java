package lanewarden.written;

import java.util.ArrayList;
import java.util.List;
import org.tomlj.Toml;

/**
 * Where each statement of a TOML text stands: the parser says where a key begins, but not where its
 * value ends. Only for a text that the parser has read without a fault.
 */
final class TomlScan {

  /** What a piece is. */
  enum Kind {
    BLANK,
    COMMENT,
    /** {@code [table]}. */
    TABLE,
    /** {@code [[table]]}. */
    ONE_OF_TABLES,
    /** {@code key = value}. */
    ENTRY
  }

  /**
   * One statement with the whole lines it takes; the pieces of a text follow each other without a
   * gap.
   *
   * @param from where its first line begins
   * @param start its first character that is no space
   * @param name the key or the table's name, in parts; empty for a blank line or a comment
   * @param nameEnd after the key as it is written
   * @param value where the value begins, for an entry
   * @param end after the value or the closing bracket; what follows is at most a comment
   * @param to after the last line's end
   */
  record Piece(
      Kind kind, int from, int start, List<String> name, int nameEnd, int value, int end, int to) {

    boolean isTable() {
      return kind == Kind.TABLE || kind == Kind.ONE_OF_TABLES;
    }
  }

  /** A stretch of the text. */
  record Span(int from, int to) {}

  private final String text;

  TomlScan(String text) {
    this.text = text;
  }

  /** The pieces, in the order of the file. */
  List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    for (int at = 0; at < text.length(); at = pieces.get(pieces.size() - 1).to()) {
      pieces.add(piece(at));
    }
    return pieces;
  }

  /** Where the items of the list stand that begins here. */
  List<Span> items(int list) {
    List<Span> items = new ArrayList<>();
    int at = list + 1;
    while (text.charAt(at) != ']') {
      char c = text.charAt(at);
      if (c == '#') {
        at = lineEnd(at);
      } else if (c == ',' || Character.isWhitespace(c)) {
        at++;
      } else {
        items.add(new Span(at, afterValue(at)));
        at = afterValue(at);
      }
    }
    return items;
  }

  private Piece piece(int from) {
    int start = afterSpaces(from);
    if (start == text.length() || text.charAt(start) == '\n' || text.charAt(start) == '\r') {
      return unnamed(Kind.BLANK, from, start);
    }
    return switch (text.charAt(start)) {
      case '#' -> unnamed(Kind.COMMENT, from, start);
      case '[' -> table(from, start);
      default -> entry(from, start);
    };
  }

  private Piece unnamed(Kind kind, int from, int start) {
    return new Piece(kind, from, start, List.of(), start, start, start, afterLine(start));
  }

  private Piece table(int from, int start) {
    int brackets = text.startsWith("[[", start) ? 2 : 1;
    int nameEnd = afterKey(start + brackets, ']');
    int end = nameEnd + brackets;
    return new Piece(
        brackets == 2 ? Kind.ONE_OF_TABLES : Kind.TABLE,
        from,
        start,
        name(start + brackets, nameEnd),
        nameEnd,
        end,
        end,
        afterLine(end));
  }

  private Piece entry(int from, int start) {
    int equals = afterKey(start, '=');
    int value = afterSpaces(equals + 1);
    int end = afterValue(value);
    int nameEnd = start + text.substring(start, equals).stripTrailing().length();
    List<String> name = name(start, equals);
    return new Piece(Kind.ENTRY, from, start, name, nameEnd, value, end, afterLine(end));
  }

  private List<String> name(int from, int to) {
    return List.copyOf(Toml.parseDottedKey(text.substring(from, to).strip()));
  }

  /** Where the mark stands that ends a key; a quoted part may hold the same mark. */
  private int afterKey(int from, char mark) {
    int at = from;
    while (text.charAt(at) != mark) {
      at = isQuote(at) ? afterText(at) : at + 1;
    }
    return at;
  }

  private int afterValue(int from) {
    if (isQuote(from)) {
      return afterText(from);
    }
    char first = text.charAt(from);
    return first == '[' || first == '{' ? afterNest(from) : afterBare(from);
  }

  /** A list or an inline table, whatever stands in it. */
  private int afterNest(int from) {
    int depth = 0;
    int at = from;
    do {
      char c = text.charAt(at);
      depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
      at = isQuote(at) ? afterText(at) : c == '#' ? lineEnd(at) : at + 1;
    } while (depth > 0);
    return at;
  }

  /** A number, a date, a time or a flag; a date and a time may have a space between them. */
  private int afterBare(int from) {
    int at = from;
    while (at < text.length() && "#\n,]}".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return from + text.substring(from, at).stripTrailing().length();
  }

  private int afterText(int from) {
    char quote = text.charAt(from);
    String several = String.valueOf(quote).repeat(3);
    String closing = text.startsWith(several, from) ? several : String.valueOf(quote);
    int at = from + closing.length();
    while (!text.startsWith(closing, at)) {
      at += quote == '"' && text.charAt(at) == '\\' ? 2 : 1;
    }
    at += closing.length();
    // up to two quotes may stand directly before the three that close
    int last = closing.length() == 3 ? Math.min(at + 2, text.length()) : at;
    while (at < last && text.charAt(at) == quote) {
      at++;
    }
    return at;
  }

  private boolean isQuote(int at) {
    return text.charAt(at) == '"' || text.charAt(at) == '\'';
  }

  private int afterSpaces(int from) {
    int at = from;
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
      at++;
    }
    return at;
  }

  private int lineEnd(int from) {
    int at = text.indexOf('\n', from);
    return at < 0 ? text.length() : at;
  }

  private int afterLine(int from) {
    return Math.min(lineEnd(from) + 1, text.length());
  }
}
