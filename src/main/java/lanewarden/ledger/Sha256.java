package lanewarden.ledger;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * A SHA-256 hash (FIPS 180-4): 32 bytes, equal when all of them are.
 *
 * <p>Immutable; safe for any thread.
 */
public final class Sha256 {
  /** Length of a hash in bytes. */
  public static final int LENGTH = 32;

  private static final int SHORT_HEX = 12;

  private final byte[] bytes;

  /**
   * Takes the 32 bytes of a hash that was computed elsewhere.
   *
   * @throws IllegalArgumentException when there are not exactly 32
   */
  public Sha256(byte[] bytes) {
    if (bytes.length != LENGTH) {
      throw new IllegalArgumentException("A SHA-256 hash has 32 bytes, not " + bytes.length + ".");
    }
    this.bytes = bytes.clone();
  }

  /** The hash of these bytes. */
  public static Sha256 of(byte[] message) {
    return new Sha256(digest().digest(message));
  }

  /** The all-zero value that stands for "no entry before this one". */
  static Sha256 none() {
    return new Sha256(new byte[LENGTH]);
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("Every Java platform must offer SHA-256.", missing);
    }
  }

  /** The 32 bytes. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** All 64 lower-case hex digits. */
  public String hex() {
    return HexFormat.of().formatHex(bytes);
  }

  /** The first 12 hex digits: short enough to be read aloud, and printed on slips. */
  public String shortHex() {
    return hex().substring(0, SHORT_HEX);
  }

  boolean matches(byte @Nullable [] other) {
    return Arrays.equals(bytes, other);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sha256 that && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return hex();
  }
}
