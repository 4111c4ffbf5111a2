package lanewarden.kiosk.line;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import lanewarden.journal.Fact;

/**
 * A line that did not become a reading, as the screen shows it.
 *
 * @param reason in a word or two
 * @param words in a sentence
 * @param bytes as received, escaped
 * @param source where they came from
 */
public record RefusedLine(String reason, String words, String bytes, String source) {

  static RefusedLine of(Fact.LineRefused line) {
    return new RefusedLine(
        line.reason(),
        line.words(),
        escaped(Base64.getDecoder().decode(line.raw().getBytes(StandardCharsets.US_ASCII))),
        line.source());
  }

  /** Printable ASCII as it is, the rest as {@code \r}, {@code \n}, {@code \\} or {@code \xHH}. */
  static String escaped(byte[] bytes) {
    StringBuilder text = new StringBuilder();
    for (byte one : bytes) {
      int value = one & 0xff;
      switch (value) {
        case '\r' -> text.append("\\r");
        case '\n' -> text.append("\\n");
        case '\\' -> text.append("\\\\");
        default -> {
          if (value >= 0x20 && value < 0x7f) {
            text.append((char) value);
          } else {
            text.append(String.format(Locale.ROOT, "\\x%02X", value));
          }
        }
      }
    }
    return text.toString();
  }
}
