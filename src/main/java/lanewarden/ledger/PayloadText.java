package lanewarden.ledger;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The JSON that is signed: members in a fixed order, without spaces, then the body's bytes as
 * given.
 *
 * <pre>{"v":1,"station":"…","seq":2,"prev":"…","at":"…","mono":1.234567,"kind":"…","body":{…}}
 * </pre>
 *
 * <p>The fixed order lets a stranger's script find each member without a JSON library. Not for
 * several threads at once: each takes its own.
 */
final class PayloadText {
  private static final String STATION_CHARACTER = "[^\"\\\\\\p{Cntrl}]";
  private static final Pattern STATION_NAME = Pattern.compile(STATION_CHARACTER + "{1,100}");
  private static final Pattern ENVELOPE =
      Pattern.compile(
          "\\{\"v\":1,\"station\":\"("
              + STATION_CHARACTER
              + "{1,300})\",\"seq\":([1-9][0-9]{0,17}),\"prev\":\"([A-Za-z0-9_-]{43})\",\"at\":\"([^\"]{24})\""
              + ",\"mono\":((?:0|[1-9][0-9]{0,11})\\.[0-9]{6}),\"kind\":\"([a-z][a-z-]{0,63})\",\"body\":");

  /** Longer than any envelope: the search for its end stops here. */
  private static final int LONGEST_ENVELOPE = 1024;

  private final JsonObjectBytes json = new JsonObjectBytes();

  /**
   * Whether a text can be a station's name: 1 to 100 characters, no quote, backslash or control.
   */
  static boolean isStationName(String text) {
    return STATION_NAME.matcher(text).matches()
        && !text.isBlank()
        && StandardCharsets.UTF_8.newEncoder().canEncode(text);
  }

  static byte[] write(Payload payload) {
    String envelope =
        "{\"v\":1,\"station\":\""
            + payload.station()
            + "\",\"seq\":"
            + payload.sequence()
            + ",\"prev\":\""
            + Base64Url.encode(payload.previous().bytes())
            + "\",\"at\":\""
            + Timestamp.write(payload.at())
            + "\",\"mono\":"
            + payload.monotonicSeconds().toPlainString()
            + ",\"kind\":\""
            + payload.kind()
            + "\",\"body\":";
    byte[] start = envelope.getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream text =
        new ByteArrayOutputStream(start.length + payload.body().length + 1);
    text.writeBytes(start);
    text.writeBytes(payload.body());
    text.write('}');
    return text.toByteArray();
  }

  Payload read(byte[] text) throws Malformed {
    if (!JsonObjectBytes.isCleanUtf8(text)) {
      throw malformed("it is not clean UTF-8 text");
    }
    // Latin-1 keeps one char a byte, so that places in the text are places in the bytes.
    String start =
        new String(text, 0, Math.min(text.length, LONGEST_ENVELOPE), StandardCharsets.ISO_8859_1);
    Matcher envelope = ENVELOPE.matcher(start);
    if (!envelope.lookingAt() || text[text.length - 1] != '}') {
      throw malformed("its members are not those of format version 1, in their order");
    }
    int bodyStart = envelope.end();
    byte[] body = new byte[text.length - 1 - bodyStart];
    System.arraycopy(text, bodyStart, body, 0, body.length);
    Optional<String> fault = json.fault(body);
    if (fault.isPresent()) {
      throw malformed("its body must be one JSON object, but " + fault.get());
    }
    String station =
        new String(
            text, envelope.start(1), envelope.end(1) - envelope.start(1), StandardCharsets.UTF_8);
    Instant at =
        Timestamp.read(envelope.group(4))
            .orElseThrow(() -> malformed("its time \"" + envelope.group(4) + "\" is none"));
    byte[] previous =
        Base64Url.decode(envelope.group(3))
            .orElseThrow(() -> malformed("its prev is not a hash in base64url"));
    return new Payload(
        station,
        Long.parseLong(envelope.group(2)),
        new Sha256(previous),
        at,
        new BigDecimal(envelope.group(5)),
        envelope.group(6),
        body);
  }

  private static Malformed malformed(String why) {
    return new Malformed(LedgerFault.Kind.BAD_PAYLOAD, why);
  }
}
