package lanewarden.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A private key at rest: one file, encrypted under its owner's passphrase.
 *
 * <p>The content is a compact JWE (RFC 7516) with PBES2-HS512+A256KW (RFC 7518, 4.8) and A256GCM
 * over the private JWK (RFC 8037). Its protected header also carries the owner's name and the key's
 * thumbprint, so that a sign-in list needs no passphrase. Stateless; safe for any thread.
 */
public final class KeyFile {
  /** The fault that a folder was named for a key file. */
  public static final String KEY_FOLDER = "KEY-FOLDER";

  /** The fault that a key was named for a seal's which is none. */
  public static final String KEY_NO_SEAL = "KEY-NO-SEAL";

  /** A sealed key is under a kilobyte; a larger file is something else. */
  private static final long LARGEST = 64 << 10;

  private KeyFile() {}

  /**
   * Seals a key into a new file, readable by the file's owner only where the file system can say
   * so, and wipes the passphrase. Takes about a quarter of a second, on purpose.
   *
   * @param owner whose key it is, as shown at sign-in
   * @throws LedgerException {@code KEY-EXISTS} when the file is there already, {@code KEY-IO} when
   *     it cannot be written; nothing is left behind then
   * @throws IllegalArgumentException when the passphrase is empty or the owner is blank
   */
  public static void seal(
      Path file, SigningKey key, String owner, char[] passphrase, SecureRandom random)
      throws LedgerException {
    seal(file, key.thumbprint(), PrivateJwk.of(key), owner, passphrase, random);
  }

  /** The same for a key that seals documents; its certificate rests with it. */
  public static void seal(
      Path file, SealKey key, String owner, char[] passphrase, SecureRandom random)
      throws LedgerException {
    seal(file, key.thumbprint(), PrivateJwk.of(key), owner, passphrase, random);
  }

  private static void seal(
      Path file,
      String thumbprint,
      byte[] privateJwk,
      String owner,
      char[] passphrase,
      SecureRandom random)
      throws LedgerException {
    try {
      if (Files.exists(file)) {
        throw exists(file, null);
      }
      writeBeside(file, SealedKey.seal(thumbprint, privateJwk, owner, passphrase, random));
    } catch (FileAlreadyExistsException there) {
      throw exists(file, there);
    } catch (IOException failed) {
      throw unwritten(file, failed);
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  /**
   * Seals a key that was opened under another passphrase, in place of its file, and wipes the
   * passphrase. Whenever this is cut short, one whole file is there: the old or the new.
   *
   * @param key as it was opened from this file
   * @throws LedgerException {@code KEY-DAMAGED} when the file holds another key; {@code KEY-IO}
   *     when it cannot be written: then the old file is as it was
   * @throws IllegalArgumentException when the passphrase is empty
   */
  public static void reseal(Path file, SigningKey key, char[] passphrase, SecureRandom random)
      throws LedgerException {
    reseal(file, key.thumbprint(), PrivateJwk.of(key), passphrase, random);
  }

  /** The same for a key that seals documents. */
  public static void reseal(Path file, SealKey key, char[] passphrase, SecureRandom random)
      throws LedgerException {
    reseal(file, key.thumbprint(), PrivateJwk.of(key), passphrase, random);
  }

  private static void reseal(
      Path file, String thumbprint, byte[] privateJwk, char[] passphrase, SecureRandom random)
      throws LedgerException {
    try {
      KeyLabel label = label(file);
      if (!label.thumbprint().equals(thumbprint)) {
        throw SealedKey.damaged(file, "it holds another key than was opened", null);
      }
      writeBeside(
          file,
          SealedKey.seal(thumbprint, privateJwk, label.owner(), passphrase, random),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException failed) {
      throw unwritten(file, failed);
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  /**
   * Opens a key file and wipes the passphrase.
   *
   * @throws LedgerException {@code KEY-PASSPHRASE} when the passphrase does not fit, {@code
   *     KEY-DAMAGED} when the file is no key file or was altered, {@code KEY-MISSING}, {@code
   *     KEY-FOLDER} or {@code KEY-IO} when it cannot be read
   */
  public static SigningKey open(Path file, char[] passphrase) throws LedgerException {
    SigningKey key = PrivateJwk.signingKey(privateJwk(file, passphrase), file);
    checkLabel(file, key.thumbprint());
    return key;
  }

  /**
   * Opens the file of a key that seals documents, and wipes the passphrase.
   *
   * @throws LedgerException as {@link #open} does, and {@code KEY-NO-SEAL} when the key inside is
   *     one that signs entries
   */
  public static SealKey openSeal(Path file, char[] passphrase) throws LedgerException {
    SealKey key = PrivateJwk.sealKey(privateJwk(file, passphrase), file);
    checkLabel(file, key.thumbprint());
    return key;
  }

  private static byte[] privateJwk(Path file, char[] passphrase) throws LedgerException {
    try {
      return SealedKey.open(read(file), passphrase, file);
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  private static void checkLabel(Path file, String thumbprint) throws LedgerException {
    if (!label(file).thumbprint().equals(thumbprint)) {
      throw SealedKey.damaged(file, "the key inside is not the one on its label", null);
    }
  }

  /**
   * Whose key a file holds, without opening it. Only opening the file proves that the label is
   * true.
   *
   * @throws LedgerException as {@link #open} does, except for the passphrase
   */
  public static KeyLabel label(Path file) throws LedgerException {
    return SealedKey.label(read(file), file);
  }

  private static String read(Path file) throws LedgerException {
    if (Files.isDirectory(file)) {
      throw new LedgerException(
          KEY_FOLDER,
          "The key file " + file + " could not be read.",
          "It is a folder.",
          "Name the key file itself, such as one in this folder.");
    }
    try {
      if (Files.size(file) > LARGEST) {
        throw SealedKey.damaged(file, "it is far larger than a key file", null);
      }
      return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).strip();
    } catch (NoSuchFileException missing) {
      throw new LedgerException(
          "KEY-MISSING",
          "There is no key file " + file + ".",
          "It was moved, renamed or never made.",
          "Look for it on the organizer's stick, or have the organizer enrol a new key.",
          missing);
    } catch (IOException failed) {
      throw new LedgerException(
          "KEY-IO",
          "The key file " + file + " could not be read.",
          "The system says: " + failed + ".",
          "Check the medium and the file's permissions; then try again.",
          failed);
    }
  }

  /** A half-written key must never carry the key's name, so it gets the name when it is whole. */
  private static void writeBeside(Path file, byte[] content, CopyOption... how) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException(file + " names no file");
    }
    Path draft = Files.createTempFile(folder, ".key", ".part", ownerOnly(folder));
    try {
      try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
        ByteBuffer buffer = ByteBuffer.wrap(content);
        while (buffer.hasRemaining()) {
          channel.write(buffer);
        }
        channel.force(true);
      }
      Files.move(draft, file, how);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static FileAttribute<?>[] ownerOnly(Path folder) throws IOException {
    if (!Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      return new FileAttribute<?>[0];
    }
    return new FileAttribute<?>[] {
      PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
    };
  }

  private static LedgerException unwritten(Path file, IOException failed) {
    return new LedgerException(
        "KEY-IO",
        "The key file " + file + " could not be written.",
        "The system says: " + failed + ".",
        "Check that the folder exists, is not full and may be written to; then try again.",
        failed);
  }

  private static LedgerException exists(Path file, @Nullable Throwable cause) {
    return new LedgerException(
        "KEY-EXISTS",
        "The key file " + file + " was not written.",
        "A file of that name is there already, and a key is never overwritten.",
        "Choose another name, or move the old file away first.",
        cause);
  }
}
