package lanewarden.ledger;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The right to write into a ledger: an operating-system lock on a file beside it.
 *
 * <p>The lock file is an empty SQLite database held in an exclusive transaction. A plain Java file
 * lock would do on its own, but under POSIX any second channel to the file, opened and closed in
 * the same program, silently releases it; SQLite guards against that. The system releases the lock
 * when the program ends, however it ends. The file itself stays.
 */
final class WriterLock implements AutoCloseable {
  private final Path file;
  private final Connection connection;

  private WriterLock(Path file, Connection connection) {
    this.file = file;
    this.connection = connection;
  }

  /** Takes the lock of this ledger, at once or not at all. */
  static WriterLock take(Path ledger) throws LedgerException {
    Path file = ledger.resolveSibling(ledger.getFileName() + ".lock");
    String what = "The ledger " + ledger + " was not opened for writing.";
    try {
      Connection connection = Sqlite.lock(file);
      try (Statement statement = connection.createStatement()) {
        statement.execute("BEGIN EXCLUSIVE");
      } catch (SQLException refused) {
        throw Sqlite.closing(connection, refused);
      }
      return new WriterLock(file, connection);
    } catch (SQLException refused) {
      if (refused instanceof SQLiteException sqlite
          && sqlite.getResultCode() == SQLiteErrorCode.SQLITE_BUSY) {
        throw new LedgerException(
            "LEDGER-IN-USE",
            what,
            "Another Lanewarden writes into it; only one may at a time.",
            "Close the other window or program; it may be on another computer if the folder is"
                + " shared.",
            refused);
      }
      throw StorageFault.of(file, what, refused);
    }
  }

  /** Gives the lock back. */
  @Override
  public void close() throws LedgerException {
    try {
      connection.close();
    } catch (SQLException failed) {
      throw StorageFault.of(file, "The lock file was not released.", failed);
    }
  }
}
