package lanewarden.written;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import lanewarden.quantity.Sentence;

/** The text of a file that a person wrote: UTF-8, strictly, and of a size a person writes. */
public final class WrittenText {

  /** The largest file read, in bytes: a thousand times what a person writes. */
  public static final int LARGEST = 1 << 20;

  private WrittenText() {}

  /**
   * Decodes UTF-8 strictly; a byte-order mark in front is taken off.
   *
   * @throws WrittenRefused if the file is larger than {@link #LARGEST} or is not UTF-8
   */
  public static String of(String file, byte[] bytes) throws WrittenRefused {
    if (bytes.length > LARGEST) {
      throw WrittenRefused.because(
          new WrittenFault(
              file,
              0,
              0,
              Sentence.of(FileTold.BYTES_AT_MOST, LARGEST),
              Sentence.of(FileTold.BYTES, bytes.length),
              Sentence.of(FileTold.CUT_DOWN)));
    }
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(buffer)
              .toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw WrittenRefused.because(misencoded(file, bytes, buffer.position()));
    }
  }

  /**
   * Whether a name or a reason is plain: without control characters, and without those that turn
   * the direction of writing round and so can make a text read as another.
   */
  public static boolean isPlain(String text) {
    return text.codePoints().allMatch(WrittenText::isPlain);
  }

  private static boolean isPlain(int c) {
    return !Character.isISOControl(c) && !turnsDirection(c);
  }

  /** The text with everything that is not plain as TOML escapes it, to be shown on one line. */
  static String shown(String text) {
    return isPlain(text)
        ? text
        : text.codePoints()
            .mapToObj(c -> isPlain(c) ? Character.toString(c) : escape(c))
            .collect(Collectors.joining());
  }

  /** A control character as TOML writes it in a text. */
  static String escape(int c) {
    return switch (c) {
      case '\n' -> "\\n";
      case '\r' -> "\\r";
      case '\t' -> "\\t";
      default -> "\\u%04X".formatted(c);
    };
  }

  private static boolean turnsDirection(int c) {
    return (c >= 0x202A && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069)
        || c == 0x200E
        || c == 0x200F
        || c == 0x061C;
  }

  private static WrittenFault misencoded(String file, byte[] bytes, int at) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < at; i++) {
      if (bytes[i] == '\n') {
        line++;
        column = 1;
      } else if ((bytes[i] & 0xC0) != 0x80) {
        column++;
      }
    }
    return new WrittenFault(
        file,
        line,
        column,
        Sentence.of(FileTold.UTF_8),
        Sentence.of(FileTold.NOT_UTF_8, "0x%02X".formatted(bytes[at] & 0xFF)),
        Sentence.of(FileTold.SAVE_UTF_8));
  }
}
