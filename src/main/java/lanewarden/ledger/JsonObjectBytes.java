package lanewarden.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Checks that bytes are one JSON object (RFC 8259) in UTF-8, and nothing beside it.
 *
 * <p>Keeps a parser factory between checks, because making one costs more than a check.
 */
final class JsonObjectBytes {
  /** No JSON object begins with it, but Jackson would skip the mark (RFC 8259, 8.1). */
  private static final byte FIRST_OF_BYTE_ORDER_MARK = (byte) 0xEF;

  private final JsonFactory factory =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /** What is wrong with a body, as the end of a sentence ("..., but " + fault), or nothing. */
  Optional<String> fault(byte[] body) {
    if (body.length > Draft.LONGEST_BODY) {
      return Optional.of(
          "it has " + body.length + " bytes, at most " + Draft.LONGEST_BODY + " fit");
    }
    if (!isCleanUtf8(body)) {
      return Optional.of("it is not clean UTF-8 text");
    }
    try (JsonParser parser = factory.createParser(body)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return Optional.of("it does not begin with {");
      }
      int depth = 1;
      while (depth > 0) {
        JsonToken token = parser.nextToken();
        if (token == null) {
          return Optional.of("it ends too early");
        }
        depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
        if (token.isNumeric()) {
          // Jackson puts off reading a number until it is asked for.
          parser.getDecimalValue();
        } else if (token == JsonToken.VALUE_STRING) {
          parser.getText();
        }
      }
      return parser.nextToken() == null
          ? Optional.empty()
          : Optional.of("something follows the object");
    } catch (IOException notJson) {
      return Optional.of("it is not JSON: " + firstLine(notJson));
    }
  }

  /** Jackson's later lines tell where in the stream it was, which the reader has no use for. */
  private static String firstLine(IOException notJson) {
    return String.valueOf(notJson.getMessage()).lines().findFirst().orElse("unknown");
  }

  /**
   * Whether bytes are valid UTF-8 and free of control characters other than tab and line ends.
   *
   * <p>Jackson would guess UTF-16 or UTF-32 from zero bytes, and lets overlong UTF-8 pass.
   */
  static boolean isCleanUtf8(byte[] bytes) {
    if (bytes.length > 0 && bytes[0] == FIRST_OF_BYTE_ORDER_MARK) {
      return false;
    }
    boolean ascii = true;
    for (byte b : bytes) {
      if (b >= 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r') {
        return false;
      }
      ascii &= b >= 0;
    }
    if (ascii) {
      return true;
    }
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException notUtf8) {
      return false;
    }
  }
}
