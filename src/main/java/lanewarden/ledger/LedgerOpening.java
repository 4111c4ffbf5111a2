package lanewarden.ledger;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Makes a ledger file, or opens one for writing: the lock first, then the file, then its proof. */
final class LedgerOpening {

  private final Path file;
  private final Clock clock;
  private final LongSupplier nanos;

  LedgerOpening(Path file, Clock clock, LongSupplier nanos) {
    this.file = file;
    this.clock = clock;
    this.nanos = nanos;
  }

  Ledger create(String station, SigningKey organizer) throws LedgerException {
    String what = "The ledger " + file + " was not made.";
    // Before the lock, so that a refusal leaves nothing behind.
    if (Files.exists(file)) {
      throw exists(what, null);
    }
    WriterLock lock = WriterLock.take(file);
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException there) {
      throw giveBack(lock, exists(what, there));
    } catch (IOException failed) {
      throw giveBack(
          lock,
          new LedgerException(
              "LEDGER-CANNOT-MAKE",
              what,
              "The system says: " + failed + ".",
              "Check that the folder exists, is not full and may be written to.",
              failed));
    }
    try {
      fill(station, organizer);
    } catch (SQLException failed) {
      throw giveBack(lock, discard(StorageFault.of(file, what, failed)));
    }
    return opened(lock);
  }

  private void fill(String station, SigningKey organizer) throws SQLException {
    Entry opening =
        Entry.sign(
            organizer,
            new Head(0, Sha256.none()),
            station,
            clock.instant(),
            new BigDecimal("0.000000"),
            KeyNotice.opening(organizer.publicKey()));
    Connection connection = Sqlite.writer(file);
    try {
      Store.make(connection, opening);
    } catch (SQLException failed) {
      throw Sqlite.closing(connection, failed);
    }
    // Closing the last connection moves everything from the log into the file itself.
    connection.close();
  }

  /** A file that was not filled would only stand in the way of the next attempt. */
  private LedgerException discard(LedgerException fault) {
    try {
      for (String suffix : List.of("", "-wal", "-shm")) {
        Files.deleteIfExists(file.resolveSibling(file.getFileName() + suffix));
      }
    } catch (IOException stays) {
      fault.addSuppressed(stays);
    }
    return fault;
  }

  Ledger open() throws LedgerException {
    // Before the lock, so that a refusal leaves nothing behind.
    FileHeader.check(file, "The ledger " + file + " was not opened.");
    return opened(WriterLock.take(file));
  }

  private Ledger opened(WriterLock lock) throws LedgerException {
    String what = "The ledger " + file + " was not opened.";
    try {
      Verification found = Verification.of(file);
      found.requireSound(what);
      return written(lock, found, WrittenHere.begin(file));
    } catch (IOException failed) {
      throw giveBack(lock, FileHeader.unreadable(file, what, failed));
    } catch (SQLException failed) {
      throw giveBack(lock, StorageFault.of(file, what, failed));
    } catch (LedgerException refused) {
      throw giveBack(lock, refused);
    }
  }

  private Ledger written(WriterLock lock, Verification found, WrittenHere here)
      throws SQLException {
    try {
      Connection connection = Sqlite.writer(file);
      try {
        return new Ledger(file, lock, here, new Store(file, connection), found, clock, nanos);
      } catch (SQLException failed) {
        throw Sqlite.closing(connection, failed);
      }
    } catch (SQLException | RuntimeException failed) {
      here.close();
      throw failed;
    }
  }

  private LedgerException exists(String what, @Nullable Throwable cause) {
    return new LedgerException(
        "LEDGER-EXISTS",
        what,
        "There is something at " + file + " already, and a ledger is never overwritten.",
        "Choose another folder, or open the ledger that is there.",
        cause);
  }

  private static LedgerException giveBack(WriterLock lock, LedgerException refused) {
    try {
      lock.close();
    } catch (LedgerException also) {
      refused.addSuppressed(also);
    }
    return refused;
  }
}
