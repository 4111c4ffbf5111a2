package lanewarden.ledger;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/**
 * Base64url without padding (RFC 7515, 2), read strictly.
 *
 * <p>The JDK's decoder ignores the unused bits of the last character, so that several texts mean
 * the same bytes. Here each byte sequence has exactly one text: else a character of a stored
 * signature could be changed without its value changing.
 */
final class Base64Url {
  private static final String ALPHABET =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

  private Base64Url() {}

  static String encode(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  static byte[] encodeToBytes(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encode(bytes);
  }

  static Optional<byte[]> decode(String text) {
    byte[] ascii = text.getBytes(StandardCharsets.UTF_8);
    return decode(ascii, 0, ascii.length);
  }

  /** The bytes meant by {@code text[from, to)}, or nothing when it is not canonical base64url. */
  static Optional<byte[]> decode(byte[] text, int from, int to) {
    int length = to - from;
    int rest = length % 4;
    if (rest == 1) {
      return Optional.empty();
    }
    if (rest != 0) {
      int spareBits = rest == 2 ? 0b1111 : 0b11;
      int last = ALPHABET.indexOf(text[to - 1]);
      if (last < 0 || (last & spareBits) != 0) {
        return Optional.empty();
      }
    }
    for (int i = from; i < to; i++) {
      // The JDK's decoder would take padding; this format has none.
      if (text[i] == '=') {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(Base64.getUrlDecoder().decode(Arrays.copyOfRange(text, from, to)));
    } catch (IllegalArgumentException notBase64) {
      return Optional.empty();
    }
  }
}
