package lanewarden.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.cert.CertificateException;
import java.util.Arrays;
import java.util.Base64;
import org.bouncycastle.util.BigIntegers;

/** The text of a private key: a JWK (RFC 7517), of Ed25519 (RFC 8037) or of P-256 (RFC 7518, 6). */
final class PrivateJwk {
  private static final String SIGNING_CURVE = "Ed25519";

  private PrivateJwk() {}

  static byte[] of(SigningKey key) {
    return ascii(
        "{\"crv\":\"Ed25519\",\"d\":\""
            + Base64Url.encode(key.seed())
            + "\",\"kty\":\"OKP\",\"x\":\""
            + key.publicKey().x()
            + "\"}");
  }

  /** The certificate stands in the member that RFC 7517, 4.7 has for it. */
  static byte[] of(SealKey key) {
    return ascii(
        "{\"crv\":\""
            + SealKey.CURVE
            + "\",\"d\":\""
            + Base64Url.encode(BigIntegers.asUnsignedByteArray(Sha256.LENGTH, key.secret()))
            + "\",\"kty\":\"EC\",\"x\":\""
            + Base64Url.encode(key.coordinate(0))
            + "\",\"x5c\":[\""
            + Base64.getEncoder().encodeToString(key.certificateBytes())
            + "\"],\"y\":\""
            + Base64Url.encode(key.coordinate(1))
            + "\"}");
  }

  private static byte[] ascii(String json) {
    return json.getBytes(StandardCharsets.US_ASCII);
  }

  /** The Ed25519 key of this text, which is wiped. */
  static SigningKey signingKey(byte[] json, Path file) throws LedgerException {
    byte[] seed = secret(json, SIGNING_CURVE, file);
    SigningKey key = SigningKey.ofSeed(seed);
    Arrays.fill(seed, (byte) 0);
    Arrays.fill(json, (byte) 0);
    return key;
  }

  /** The P-256 key of this text, which is wiped. */
  static SealKey sealKey(byte[] json, Path file) throws LedgerException {
    if (read(json, file).path("crv").asText().equals(SIGNING_CURVE)) {
      Arrays.fill(json, (byte) 0);
      throw new LedgerException(
          KeyFile.KEY_NO_SEAL,
          "Nothing can be sealed with the key file " + file + ".",
          "It is sound, but it holds the key of "
              + KeyFile.label(file).owner()
              + ", which signs entries: it is not the key of a seal.",
          "Name the key that seals reports, which lies beside the event's other keys.");
    }
    byte[] d = secret(json, SealKey.CURVE, file);
    try {
      byte[] certificate =
          Base64.getDecoder().decode(read(json, file).path("x5c").path(0).asText());
      return SealKey.of(new BigInteger(1, d), certificate);
    } catch (CertificateException | IllegalArgumentException unfit) {
      throw SealedKey.damaged(file, "its certificate does not fit its key", unfit);
    } finally {
      Arrays.fill(d, (byte) 0);
      Arrays.fill(json, (byte) 0);
    }
  }

  private static byte[] secret(byte[] json, String curve, Path file) throws LedgerException {
    JsonNode jwk = read(json, file);
    if (!jwk.path("crv").asText().equals(curve)) {
      throw noKey(curve, file);
    }
    return Base64Url.decode(jwk.path("d").asText())
        .filter(bytes -> bytes.length == Sha256.LENGTH)
        .orElseThrow(() -> noKey(curve, file));
  }

  private static JsonNode read(byte[] json, Path file) throws LedgerException {
    try {
      return new ObjectMapper().readTree(json);
    } catch (IOException notJson) {
      throw SealedKey.damaged(file, "it holds no key", notJson);
    }
  }

  private static LedgerException noKey(String curve, Path file) {
    return SealedKey.damaged(file, "it holds no " + curve + " key", null);
  }
}
