package lanewarden.written;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** A value to be written in a TOML file, on one line; never put together by a caller. */
public sealed interface Literal {

  /** As TOML 1.0 writes it. */
  String toml();

  /** As the parser gives it back. */
  Object value();

  /** A text in double quotes; a line end in it is written as {@code \n}. */
  static Literal text(String text) {
    return new Text(text);
  }

  /** A whole number. */
  static Literal whole(long whole) {
    return new Whole(whole);
  }

  /** A local date, without quotes; years 0 to 9999, which is all that TOML can say. */
  static Literal day(LocalDate day) {
    return new Day(day);
  }

  /** A list of texts. */
  static Literal texts(List<String> texts) {
    return new Texts(texts);
  }

  /** {@code "text"}. */
  record Text(String value) implements Literal {
    /** Refuses half a character, which no file in UTF-8 can hold. */
    public Text {
      if (!StandardCharsets.UTF_8.newEncoder().canEncode(value)) {
        throw new IllegalArgumentException("the text holds half a character");
      }
    }

    @Override
    public String toml() {
      return value.codePoints().mapToObj(Text::written).collect(Collectors.joining("", "\"", "\""));
    }

    private static String written(int c) {
      return switch (c) {
        case '"' -> "\\\"";
        case '\\' -> "\\\\";
        default -> Character.isISOControl(c) ? WrittenText.escape(c) : Character.toString(c);
      };
    }
  }

  /** {@code 3}. */
  record Whole(Long value) implements Literal {
    @Override
    public String toml() {
      return value.toString();
    }
  }

  /** {@code 2026-03-01}. */
  record Day(LocalDate value) implements Literal {
    /** Refuses a year that TOML cannot say. */
    public Day {
      if (value.getYear() < 0 || value.getYear() > 9999) {
        throw new IllegalArgumentException("a year from 0 to 9999, not " + value.getYear());
      }
    }

    @Override
    public String toml() {
      return value.toString();
    }
  }

  /** {@code ["one", "two"]}. */
  record Texts(List<String> value) implements Literal {
    /** Keeps a copy; refuses half a character in any of them. */
    public Texts {
      value = List.copyOf(value);
      value.forEach(Text::new);
    }

    @Override
    public String toml() {
      return value.stream()
          .map(text -> new Text(text).toml())
          .collect(Collectors.joining(", ", "[", "]"));
    }
  }
}
