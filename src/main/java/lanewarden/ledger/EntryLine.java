package lanewarden.ledger;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * One entry as a line of JSON: the bytes that prove, and beside them what they say, for reading.
 *
 * <pre>{"jws":"…","entry":{"v":1,…}}</pre>
 *
 * <p>The payload is repeated byte for byte, but for its line ends: in JSON they stand only between
 * the parts of an object, where a space means the same and does not break the line.
 */
final class EntryLine {
  private static final byte[] START = ascii("{\"jws\":\"");
  private static final byte[] MIDDLE = ascii("\",\"entry\":");

  private EntryLine() {}

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /** The line of an entry, without its line end. */
  static byte[] of(Entry entry) {
    try {
      return of(entry.jwsBytes(), Jws.read(entry.jwsBytes()).payload());
    } catch (Malformed impossible) {
      throw new IllegalStateException("An entry's bytes were read before.", impossible);
    }
  }

  private static byte[] of(byte[] jws, byte[] payload) {
    ByteArrayOutputStream line = new ByteArrayOutputStream(jws.length + payload.length + 32);
    line.writeBytes(START);
    line.writeBytes(jws);
    line.writeBytes(MIDDLE);
    for (byte b : payload) {
      line.write(b == '\n' || b == '\r' ? ' ' : b);
    }
    line.write('}');
    return line.toByteArray();
  }

  /** The signed bytes in a line, whatever stands beside them; nothing where it has none. */
  static Optional<byte[]> jws(byte[] line) {
    int end = START.length;
    while (end < line.length && line[end] != '"') {
      end++;
    }
    boolean begins =
        end < line.length && Arrays.equals(line, 0, START.length, START, 0, START.length);
    return begins ? Optional.of(Arrays.copyOfRange(line, START.length, end)) : Optional.empty();
  }

  /** Whether a line is exactly the one of the entry signed in it. */
  static boolean agrees(byte[] line, byte[] jws, byte[] payload) {
    return Arrays.equals(line, of(jws, payload));
  }
}
