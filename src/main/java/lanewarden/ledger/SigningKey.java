package lanewarden.ledger;

import java.security.SecureRandom;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;
import org.bouncycastle.math.ec.rfc8032.Ed25519;

/**
 * A private Ed25519 key (RFC 8032) of the organizer or of an official.
 *
 * <p>Immutable; safe for any thread. Its text never shows the private part. Rests on disk only
 * sealed, see {@link KeyFile}.
 */
public final class SigningKey {
  private final Ed25519PrivateKeyParameters key;
  private final VerifyingKey publicKey;

  private SigningKey(Ed25519PrivateKeyParameters key) {
    this.key = key;
    this.publicKey = new VerifyingKey(key.generatePublicKey());
  }

  /** A new key from this randomness. */
  public static SigningKey generate(SecureRandom random) {
    return new SigningKey(new Ed25519PrivateKeyParameters(random));
  }

  /** The key of this 32-byte seed: a JWK's {@code d}. */
  static SigningKey ofSeed(byte[] seed) {
    if (seed.length != Ed25519.SECRET_KEY_SIZE) {
      throw new IllegalArgumentException("A private Ed25519 key has 32 bytes.");
    }
    return new SigningKey(new Ed25519PrivateKeyParameters(seed));
  }

  /** RFC 7638 thumbprint of the public key. */
  public String thumbprint() {
    return publicKey.thumbprint();
  }

  /** The public half. */
  public VerifyingKey publicKey() {
    return publicKey;
  }

  /** The 64-byte signature of this message. */
  public byte[] sign(byte[] message) {
    byte[] signature = new byte[Ed25519.SIGNATURE_SIZE];
    key.sign(Ed25519.Algorithm.Ed25519, null, message, 0, message.length, signature, 0);
    return signature;
  }

  byte[] seed() {
    return key.getEncoded();
  }

  @Override
  public String toString() {
    return "private key of " + thumbprint();
  }
}
