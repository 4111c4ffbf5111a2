package lanewarden.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * Looks at a file's first bytes before any database does, to refuse in plain words what is no
 * ledger. One that is {@link WrittenHere} was looked at before that.
 */
final class FileHeader {
  private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
  private static final String ENTRIES = "entries.jsonl";
  private static final byte OBJECT = '{';
  private static final int LENGTH = 100;
  private static final int PAGE_SIZE_AT = 16;
  private static final int PAGES_AT = 28;
  private static final int LARGEST_PAGE = 65_536;

  private FileHeader() {}

  /** Refuses a path that holds no whole SQLite file. Never makes or changes anything. */
  static void check(Path file, String what) throws LedgerException {
    if (isBesideEntries(file)) {
      throw exported(
          file, what, "There is no ledger " + file + ", but exported entries beside it.");
    }
    if (Files.isDirectory(file) || !Files.exists(file)) {
      throw new LedgerException(
          "LEDGER-MISSING",
          what,
          "There is no file " + file + ".",
          "Look for the event's folder; a new ledger is made only with a new event.");
    }
    try {
      Optional<byte[]> start = WrittenHere.orElse(file, () -> start(file));
      if (start.isPresent()) {
        check(file, what, Files.size(file), start.get());
      }
    } catch (IOException failed) {
      throw unreadable(file, what, failed);
    }
  }

  static LedgerException unreadable(Path file, String what, IOException failed) {
    return new LedgerException(
        "LEDGER-IO",
        what,
        file + " cannot be read; the system says: " + failed + ".",
        "Check that its medium is plugged in and that you may read it.",
        failed);
  }

  private static byte[] start(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(LENGTH);
    }
  }

  private static void check(Path file, String what, long size, byte[] start)
      throws LedgerException, IOException {
    if (size == 0) {
      throw new LedgerException(
          "LEDGER-EMPTY",
          what,
          file + " is empty: its making was cut short, or it was emptied.",
          "If no entry was ever written, delete it and make the event again; else take a copy.");
    }
    if (!Arrays.equals(MAGIC, Arrays.copyOf(start, MAGIC.length))) {
      if (start[0] == OBJECT) {
        throw exported(file, what, file + " holds entries in text, as an export does.");
      }
      throw foreign(file, what, "it is no SQLite file");
    }
    // While a log lies beside it, the file itself may rightly be behind.
    boolean hasLog = sizeOf(file.resolveSibling(file.getFileName() + "-wal")) > 0;
    if (!hasLog && (start.length < LENGTH || size < promisedSize(start))) {
      throw new LedgerException(
          "LEDGER-CUT",
          what,
          file + " was cut: it has " + size + " bytes and should have " + promisedSize(start) + ".",
          "Keep it for evidence, and take a whole copy; copies fail when a stick is pulled early.");
    }
  }

  private static long promisedSize(byte[] start) {
    if (start.length < LENGTH) {
      return LENGTH;
    }
    ByteBuffer header = ByteBuffer.wrap(start);
    int pageSize = Short.toUnsignedInt(header.getShort(PAGE_SIZE_AT));
    long pages = Integer.toUnsignedLong(header.getInt(PAGES_AT));
    return pages * (pageSize == 1 ? LARGEST_PAGE : pageSize);
  }

  private static long sizeOf(Path file) throws IOException {
    return Files.exists(file) ? Files.size(file) : 0;
  }

  /** A ledger that is not there, in the folder of an export. */
  private static boolean isBesideEntries(Path file) {
    return !Files.exists(file) && Files.isRegularFile(file.resolveSibling(ENTRIES));
  }

  private static LedgerException exported(Path file, String what, String why) {
    return new LedgerException(
        "LEDGER-EXPORTED",
        what,
        why,
        "Bring the entries in first, which verifies them: import "
            + (Files.exists(file) ? file : file.resolveSibling(ENTRIES))
            + " --out LEDGER; then use that ledger.");
  }

  static LedgerException foreign(Path file, String what, String why) {
    return new LedgerException(
        "LEDGER-FOREIGN",
        what,
        file + " is not a Lanewarden ledger: " + why + ".",
        "Choose the event's own ledger file.");
  }
}
