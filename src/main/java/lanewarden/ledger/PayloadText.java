package lanewarden.ledger;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

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
  private static final byte[] STATION = ascii("{\"v\":1,\"station\":\"");
  private static final byte[] SEQUENCE = ascii("\",\"seq\":");
  private static final byte[] PREVIOUS = ascii(",\"prev\":\"");
  private static final byte[] AT = ascii("\",\"at\":\"");
  private static final byte[] SECONDS = ascii("\",\"mono\":");
  private static final byte[] KIND = ascii(",\"kind\":\"");
  private static final byte[] BODY = ascii("\",\"body\":");

  private static final Pattern STATION_NAME = Pattern.compile("[^\"\\\\\\p{Cntrl}]{1,100}");
  private static final int LONGEST_STATION = 300;
  private static final int LONGEST_NUMBER = 18;
  private static final int LONGEST_KIND = 64;
  private static final int PREVIOUS_LENGTH = 43;
  private static final int DECIMALS = 6;

  private final JsonObjectBytes json = new JsonObjectBytes();

  /** All entries of a ledger name the same station, so it is checked once. */
  private @Nullable String lastStation;

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * Whether a text can be a station's name: 1 to 100 characters, no quote, backslash or control.
   */
  static boolean isStationName(String text) {
    return STATION_NAME.matcher(text).matches()
        && !text.isBlank()
        && StandardCharsets.UTF_8.newEncoder().canEncode(text);
  }

  static byte[] write(Payload payload) {
    ByteArrayOutputStream text = new ByteArrayOutputStream(payload.body().length + 256);
    text.writeBytes(STATION);
    text.writeBytes(payload.station().getBytes(StandardCharsets.UTF_8));
    text.writeBytes(SEQUENCE);
    text.writeBytes(ascii(Long.toString(payload.sequence())));
    text.writeBytes(PREVIOUS);
    text.writeBytes(Base64Url.encodeToBytes(payload.previous().bytes()));
    text.writeBytes(AT);
    text.writeBytes(ascii(Timestamp.write(payload.at())));
    text.writeBytes(SECONDS);
    text.writeBytes(ascii(payload.monotonicSeconds().toPlainString()));
    text.writeBytes(KIND);
    text.writeBytes(ascii(payload.kind()));
    text.writeBytes(BODY);
    text.writeBytes(payload.body());
    text.write('}');
    return text.toByteArray();
  }

  /** The sequence that a payload says it has, whatever else is wrong with it. */
  static OptionalLong sequence(byte[] text) {
    try {
      PayloadCursor cursor = new PayloadCursor(text);
      cursor.over(STATION).upTo('"', LONGEST_STATION);
      return OptionalLong.of(sequence(cursor.over(SEQUENCE).upTo(',', LONGEST_NUMBER)));
    } catch (Malformed unread) {
      return OptionalLong.empty();
    }
  }

  Payload read(byte[] text) throws Malformed {
    if (!JsonObjectBytes.isCleanUtf8(text)) {
      throw malformed("it is not clean UTF-8 text");
    }
    PayloadCursor cursor = new PayloadCursor(text);
    String station = station(cursor.over(STATION).upTo('"', LONGEST_STATION));
    long sequence = sequence(cursor.over(SEQUENCE).upTo(',', LONGEST_NUMBER));
    Sha256 previous = previous(cursor.over(PREVIOUS).upTo('"', PREVIOUS_LENGTH));
    Instant at = at(cursor.over(AT).upTo('"', Timestamp.LENGTH));
    BigDecimal seconds = seconds(cursor.over(SECONDS).upTo(',', LONGEST_NUMBER + 1));
    String kind = cursor.over(KIND).upTo('"', LONGEST_KIND);
    if (!Draft.isKind(kind)) {
      throw malformed("its kind \"" + kind + "\" is not lower-case letters and dashes");
    }
    byte[] body = cursor.over(BODY).rest();
    Optional<String> fault = json.fault(body);
    if (fault.isPresent()) {
      throw malformed("its body must be one JSON object, but " + fault.get());
    }
    return new Payload(station, sequence, previous, at, seconds, kind, body);
  }

  private String station(String name) throws Malformed {
    if (!name.equals(lastStation)) {
      if (!isStationName(name)) {
        throw malformed("its station \"" + name + "\" is not a name");
      }
      lastStation = name;
    }
    return name;
  }

  private static long sequence(String text) throws Malformed {
    if (!isNumber(text, 0, text.length()) || text.equals("0")) {
      throw malformed("its seq \"" + text + "\" is not a whole number");
    }
    return Long.parseLong(text);
  }

  private static BigDecimal seconds(String text) throws Malformed {
    int dot = text.length() - DECIMALS - 1;
    if (dot < 1
        || text.charAt(dot) != '.'
        || !isNumber(text, 0, dot)
        || !isDigits(text, dot + 1, text.length())) {
      throw malformed("its mono \"" + text + "\" is not seconds with six decimals");
    }
    return new BigDecimal(text);
  }

  private static boolean isNumber(String text, int from, int to) {
    boolean needlessZero = to - from > 1 && text.charAt(from) == '0';
    return to > from && !needlessZero && isDigits(text, from, to);
  }

  private static boolean isDigits(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  private static Instant at(String text) throws Malformed {
    return Timestamp.read(text).orElseThrow(() -> malformed("its time \"" + text + "\" is none"));
  }

  private static Sha256 previous(String text) throws Malformed {
    return Base64Url.decode(text)
        .filter(bytes -> bytes.length == Sha256.LENGTH)
        .map(Sha256::new)
        .orElseThrow(() -> malformed("its prev is not a hash in base64url"));
  }

  private static Malformed malformed(String why) {
    return new Malformed(LedgerFault.Kind.BAD_PAYLOAD, why);
  }
}
