package lanewarden.ledger;

import java.util.Map;
import java.util.Optional;
import org.bouncycastle.crypto.params.Ed25519PublicKeyParameters;
import org.bouncycastle.math.ec.rfc8032.Ed25519;

/**
 * A public Ed25519 key (RFC 8032) with its JWK form (RFC 8037) and thumbprint (RFC 7638).
 *
 * <p>Immutable; safe for any thread. Equal when the key's 32 bytes are.
 */
public final class VerifyingKey {
  /** Length of a signature in bytes. */
  static final int SIGNATURE_LENGTH = Ed25519.SIGNATURE_SIZE;

  private final Ed25519PublicKeyParameters key;
  private final String x;
  private final String thumbprint;

  VerifyingKey(Ed25519PublicKeyParameters key) {
    this.key = key;
    this.x = Base64Url.encode(key.getEncoded());
    this.thumbprint = Thumbprint.of(members());
  }

  /** The key of these 32 bytes, or nothing when they are no point of the curve. */
  public static Optional<VerifyingKey> of(byte[] raw) {
    if (raw.length != Ed25519.PUBLIC_KEY_SIZE) {
      return Optional.empty();
    }
    try {
      return Optional.of(new VerifyingKey(new Ed25519PublicKeyParameters(raw)));
    } catch (IllegalArgumentException notOnTheCurve) {
      return Optional.empty();
    }
  }

  /** The key of a JWK's {@code x} member, or nothing when that is not such a key. */
  public static Optional<VerifyingKey> ofX(String x) {
    return Base64Url.decode(x).flatMap(VerifyingKey::of);
  }

  private Map<String, String> members() {
    return Map.of("crv", "Ed25519", "kty", "OKP", "x", x);
  }

  /** The key's 32 bytes. */
  public byte[] raw() {
    return key.getEncoded();
  }

  /** The key's 32 bytes in base64url: a JWK's {@code x}. */
  public String x() {
    return x;
  }

  /** The public JWK, members in lexical order, without spaces: the text the thumbprint is of. */
  public String jwk() {
    return Thumbprint.canonical(members());
  }

  /** RFC 7638 thumbprint with SHA-256, base64url, 43 characters. */
  public String thumbprint() {
    return thumbprint;
  }

  /** Whether this signature of this message was made with the matching private key. */
  public boolean verifies(byte[] message, byte[] signature) {
    return verifies(message, message.length, signature);
  }

  boolean verifies(byte[] message, int length, byte[] signature) {
    return signature.length == SIGNATURE_LENGTH
        && key.verify(Ed25519.Algorithm.Ed25519, null, message, 0, length, signature, 0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof VerifyingKey that && x.equals(that.x);
  }

  @Override
  public int hashCode() {
    return x.hashCode();
  }

  @Override
  public String toString() {
    return "public key " + thumbprint;
  }
}
