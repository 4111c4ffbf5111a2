package lanewarden.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Checks that bytes are one JSON object (RFC 8259) in UTF-8, and nothing beside it. */
final class JsonObjectBytes {
  private JsonObjectBytes() {}

  /** A factory whose parsers refuse a name that stands twice in one object. */
  static JsonFactory strictFactory() {
    return JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
  }

  /** Checks a draft's body. */
  static void check(byte[] body) {
    if (body.length > Draft.LONGEST_BODY) {
      throw refused("it has " + body.length + " bytes, at most " + Draft.LONGEST_BODY + " fit");
    }
    if (!isCleanUtf8(body)) {
      throw refused("it is not clean UTF-8 text");
    }
    try (JsonParser parser = strictFactory().createParser(body)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw refused("it does not begin with {");
      }
      // Jackson checks what it walks over: skipping is reading.
      parser.skipChildren();
      if (parser.nextToken() != null) {
        throw refused("something follows the object");
      }
    } catch (IOException notJson) {
      throw refused("it is not JSON: " + notJson.getMessage());
    }
  }

  /**
   * Whether bytes are valid UTF-8 and free of control characters other than tab and line ends.
   *
   * <p>Jackson would guess UTF-16 or UTF-32 from zero bytes, and lets overlong UTF-8 pass.
   */
  static boolean isCleanUtf8(byte[] bytes) {
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

  private static IllegalArgumentException refused(String why) {
    return new IllegalArgumentException(
        "An entry's body must be one JSON object in UTF-8, but " + why + ".");
  }
}
