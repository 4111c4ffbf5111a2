package lanewarden.audit.press;

import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/**
 * Writes text into a page so that it prints as it is: markup characters are escaped, and a
 * character that the typeface cannot show, or that would hide or reorder others, stands as its
 * number.
 *
 * <p>Owned by one thread.
 */
public final class Ink {
  private final List<Typeface> faces;
  private final BitSet shown = new BitSet();

  /** Text for pages that are set in these typefaces. */
  public Ink(List<Typeface> faces) {
    this.faces = List.copyOf(faces);
  }

  /** The text as XML character data or attribute value. */
  public String escape(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> put(c, out));
    return out.toString();
  }

  /** The text as a picture's letters, which are no markup. */
  public String plain(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> plain(c, out));
    return out.toString();
  }

  private void put(int character, StringBuilder out) {
    switch (character) {
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '&' -> out.append("&amp;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      case '\n', '\t' -> out.append((char) character);
      case '\r' -> out.append("&#13;");
      default -> plain(character, out);
    }
  }

  private void plain(int character, StringBuilder out) {
    if (shown.get(character) || shows(character)) {
      shown.set(character);
      out.appendCodePoint(character);
    } else {
      out.append(String.format(Locale.ROOT, "[U+%04X]", character));
    }
  }

  private boolean shows(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.PRIVATE_USE,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> faces.stream().allMatch(face -> face.covers(character));
    };
  }
}
