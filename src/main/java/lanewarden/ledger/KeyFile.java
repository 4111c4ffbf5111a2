package lanewarden.ledger;

import java.nio.file.Path;
import java.security.SecureRandom;

/** Public shape only; the next commits fill it. */
public final class KeyFile {
  private KeyFile() {}

  /** Refuses an existing file; wipes the passphrase. */
  public static void seal(
      Path file, SigningKey key, String owner, char[] passphrase, SecureRandom random)
      throws LedgerException {
    throw new UnsupportedOperationException();
  }

  /** Wipes the passphrase; code KEY-PASSPHRASE when it is wrong. */
  public static SigningKey open(Path file, char[] passphrase) throws LedgerException {
    throw new UnsupportedOperationException();
  }

  /** Owner and thumbprint, readable without the passphrase (and proved only by opening). */
  public static KeyLabel label(Path file) throws LedgerException {
    throw new UnsupportedOperationException();
  }
}
