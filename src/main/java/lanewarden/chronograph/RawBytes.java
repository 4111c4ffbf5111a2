package lanewarden.chronograph;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Bytes as they came over the wire, never changed.
 *
 * <p>Equal when their bytes are. {@link #escaped} writes them so that a person can read them and
 * {@link #parse} reads that writing back to equal bytes.
 */
public final class RawBytes {
  private static final RawBytes NONE = new RawBytes(new byte[0]);

  private final byte[] bytes;

  private RawBytes(byte[] bytes) {
    this.bytes = bytes;
  }

  /** A copy of the given bytes. */
  public static RawBytes of(byte[] bytes) {
    return bytes.length == 0 ? NONE : new RawBytes(bytes.clone());
  }

  /** A copy of some of the given bytes, from one place up to before another. */
  static RawBytes of(byte[] bytes, int from, int to) {
    return from == to ? NONE : new RawBytes(Arrays.copyOfRange(bytes, from, to));
  }

  /** The UTF-8 bytes of a text; for ASCII text, one byte a character. */
  public static RawBytes ofText(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  /** A copy of the bytes. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** How many bytes there are. */
  public int length() {
    return bytes.length;
  }

  /** One character a byte (ISO 8859-1), so that every byte can be matched and none is lost. */
  String characters() {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** These bytes, then the others. */
  RawBytes then(RawBytes next) {
    byte[] joined = Arrays.copyOf(bytes, bytes.length + next.bytes.length);
    System.arraycopy(next.bytes, 0, joined, bytes.length, next.bytes.length);
    return new RawBytes(joined);
  }

  /**
   * The bytes in printable ASCII: {@code \r}, {@code \n}, {@code \\} and {@code \xHH} stand for
   * what cannot be seen. A space at either end is written {@code \x20}, so that no editor loses it.
   */
  public String escaped() {
    StringBuilder text = new StringBuilder(bytes.length + 8);
    for (int i = 0; i < bytes.length; i++) {
      int b = bytes[i] & 0xFF;
      boolean hiddenSpace = b == ' ' && (i == 0 || i == bytes.length - 1);
      if (b == '\r') {
        text.append("\\r");
      } else if (b == '\n') {
        text.append("\\n");
      } else if (b == '\\') {
        text.append("\\\\");
      } else if (b < ' ' || b > '~' || hiddenSpace) {
        text.append("\\x%02X".formatted(b));
      } else {
        text.append((char) b);
      }
    }
    return text.toString();
  }

  /**
   * Reads what {@link #escaped} writes.
   *
   * @throws IllegalArgumentException if a character is not printable ASCII or an escape is unknown;
   *     the message says which and where, counted from 1
   */
  public static RawBytes parse(String escaped) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(escaped.length());
    int i = 0;
    while (i < escaped.length()) {
      char c = escaped.charAt(i);
      if (c < ' ' || c > '~') {
        throw refused(escaped, i, "write it as \\xHH");
      }
      if (c != '\\') {
        bytes.write(c);
        i++;
        continue;
      }
      String escape = escaped.substring(i, Math.min(escaped.length(), i + 2));
      switch (escape) {
        case "\\r" -> bytes.write('\r');
        case "\\n" -> bytes.write('\n');
        case "\\\\" -> bytes.write('\\');
        case "\\x" -> {
          bytes.write(hex(escaped, i));
          i += 2;
        }
        default -> throw refused(escaped, i, "use \\r, \\n, \\\\ or \\xHH");
      }
      i += 2;
    }
    return of(bytes.toByteArray());
  }

  private static int hex(String escaped, int at) {
    int high = at + 2 < escaped.length() ? digit(escaped.charAt(at + 2)) : -1;
    int low = at + 3 < escaped.length() ? digit(escaped.charAt(at + 3)) : -1;
    if (high < 0 || low < 0) {
      throw refused(escaped, at, "write two hexadecimal digits after \\x");
    }
    return high << 4 | low;
  }

  private static int digit(char c) {
    return c < 128 ? Character.digit(c, 16) : -1;
  }

  private static IllegalArgumentException refused(String escaped, int at, String mend) {
    return new IllegalArgumentException(
        "character %d (%s): %s".formatted(at + 1, shown(escaped.charAt(at)), mend));
  }

  private static String shown(char c) {
    return c < ' ' || c > '~' ? "U+%04X".formatted((int) c) : "'" + c + "'";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RawBytes that && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  /** The escaped writing. */
  @Override
  public String toString() {
    return escaped();
  }
}
