package lanewarden.ledger;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A compact JWS (RFC 7515, 7.1) with EdDSA over Ed25519 (RFC 8037, 3.1): header, payload,
 * signature.
 *
 * <p>The header is always {@code {"alg":"EdDSA","kid":"<thumbprint>"}}, byte for byte: nothing in
 * it can change the way a signature is checked.
 */
final class Jws {
  private static final String HEADER_START = "{\"alg\":\"EdDSA\",\"kid\":\"";
  private static final String HEADER_END = "\"}";
  private static final int THUMBPRINT_LENGTH = 43;

  private final byte[] bytes;
  private final String signer;
  private final byte[] payload;
  private final byte[] signature;

  private Jws(byte[] bytes, String signer, byte[] payload, byte[] signature) {
    this.bytes = bytes;
    this.signer = signer;
    this.payload = payload;
    this.signature = signature;
  }

  /** The bytes of a signed payload. */
  static byte[] sign(SigningKey key, byte[] payload) {
    byte[] header = encodedHeader(key.thumbprint());
    byte[] body = Base64Url.encodeToBytes(payload);
    byte[] input =
        ByteBuffer.allocate(header.length + 1 + body.length)
            .put(header)
            .put((byte) '.')
            .put(body)
            .array();
    byte[] signature = Base64Url.encodeToBytes(key.sign(input));
    return ByteBuffer.allocate(input.length + 1 + signature.length)
        .put(input)
        .put((byte) '.')
        .put(signature)
        .array();
  }

  private static byte[] encodedHeader(String thumbprint) {
    String header = HEADER_START + thumbprint + HEADER_END;
    return Base64Url.encodeToBytes(header.getBytes(StandardCharsets.US_ASCII));
  }

  /** Takes stored bytes apart; the signature is not checked yet. */
  static Jws read(byte[] bytes) throws Malformed {
    int first = dot(bytes, 0);
    int second = dot(bytes, first + 1);
    byte[] header = part("header", bytes, 0, first);
    byte[] payload = part("payload", bytes, first + 1, second);
    byte[] signature = part("signature", bytes, second + 1, bytes.length);
    if (signature.length != VerifyingKey.SIGNATURE_LENGTH) {
      throw malformed("its signature has " + signature.length + " bytes instead of 64");
    }
    return new Jws(bytes, signer(header), payload, signature);
  }

  private static int dot(byte[] bytes, int from) throws Malformed {
    for (int i = from; i < bytes.length; i++) {
      if (bytes[i] == '.') {
        return i;
      }
    }
    throw malformed("it does not have three parts joined by dots");
  }

  private static byte[] part(String name, byte[] bytes, int from, int to) throws Malformed {
    return Base64Url.decode(bytes, from, to)
        .orElseThrow(() -> malformed("its " + name + " is not base64url"));
  }

  private static String signer(byte[] header) throws Malformed {
    String text = new String(header, StandardCharsets.ISO_8859_1);
    int length = HEADER_START.length() + THUMBPRINT_LENGTH + HEADER_END.length();
    if (text.length() != length || !text.startsWith(HEADER_START) || !text.endsWith(HEADER_END)) {
      throw malformed("its header is not alg EdDSA and the kid of a key, in this order");
    }
    return text.substring(HEADER_START.length(), HEADER_START.length() + THUMBPRINT_LENGTH);
  }

  private static Malformed malformed(String why) {
    return new Malformed(LedgerFault.Kind.BAD_JWS, why);
  }

  /** The {@code kid}: thumbprint of the key that signed. */
  String signer() {
    return signer;
  }

  byte[] payload() {
    return payload;
  }

  /** Whether this key made the signature. The signing input is everything before the last dot. */
  boolean verifies(VerifyingKey key) {
    int lastDot = bytes.length - 1;
    while (bytes[lastDot] != '.') {
      lastDot--;
    }
    return key.verifies(bytes, lastDot, signature);
  }

  @Override
  public String toString() {
    return "JWS signed by " + signer + " " + Arrays.hashCode(bytes);
  }
}
