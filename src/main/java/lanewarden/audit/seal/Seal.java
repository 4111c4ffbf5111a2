package lanewarden.audit.seal;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.SealKey;
import lanewarden.ledger.Sha256;

/**
 * The key that seals reports, opened for one report.
 *
 * <p>Immutable; safe for any thread.
 */
public final class Seal {
  private final SealKey key;

  /** A seal whose key is open already. */
  public Seal(SealKey key) {
    this.key = key;
  }

  /**
   * Opens the key.
   *
   * @param passphrase of the organizer; is wiped
   * @throws LedgerException as {@link KeyFile#openSeal} does
   */
  public static Seal open(Path file, char[] passphrase) throws LedgerException {
    return new Seal(KeyFile.openSeal(file, passphrase));
  }

  /** SHA-256 of the certificate, in the form that PDF readers show: pairs of hex digits. */
  public String fingerprint() {
    return fingerprint(key.certificateBytes());
  }

  /** The same of any certificate (X.509, DER). */
  public static String fingerprint(byte[] certificate) {
    return HexFormat.ofDelimiter(":").withUpperCase().formatHex(Sha256.of(certificate).bytes());
  }

  /** Whether a certificate (X.509, DER) is this seal's. */
  public boolean has(byte[] certificate) {
    return Arrays.equals(key.certificateBytes(), certificate);
  }

  /** Whose seal it is, as the certificate says. */
  String name() {
    return key.certificate().getSubjectX500Principal().getName();
  }

  SealKey key() {
    return key;
  }
}
