package lanewarden.written;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 (FIPS 180-4) of a written file's bytes, by which a ledger names the file. */
public final class Fingerprint {

  private Fingerprint() {}

  /** 64 lower-case hexadecimal digits. */
  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("this Java runtime has no SHA-256, which all must have", e);
    }
  }
}
