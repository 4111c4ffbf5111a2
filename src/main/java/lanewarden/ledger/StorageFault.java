package lanewarden.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Turns the database's errors into sentences for the official at the table. */
final class StorageFault {
  private static final int PRIMARY_CODE = 0xff;

  /** Bytes of the first piece of the index beside a ledger: SQLite, "WAL-mode File Format", 2. */
  private static final long INDEX = 32 << 10;

  private StorageFault() {}

  /**
   * The exception for an error of the database.
   *
   * @param what what did not happen, as a sentence
   */
  static LedgerException of(Path file, String what, SQLException error) {
    if (isHeadMoved(error)) {
      return new LedgerException(
          "LEDGER-HEAD-MOVED",
          what,
          "Another program wrote into " + file + " since it was opened.",
          "Close that program, then open the ledger again: that verifies it.",
          error);
    }
    return switch (primary(error)) {
      case SQLITE_FULL -> full(file, what, error);
      case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> readOnly(file, what, error);
      case SQLITE_BUSY, SQLITE_LOCKED ->
          new LedgerException(
              "LEDGER-BUSY",
              what,
              "Another program holds " + file + " locked.",
              "Close database browsers, copy or backup programs that use it, then try again.",
              error);
      case SQLITE_CANTOPEN ->
          isProtected(file)
              ? readOnly(file, what, error)
              : new LedgerException(
                  "LEDGER-CANNOT-OPEN",
                  what,
                  file + " or a file beside it cannot be opened or made.",
                  "Check that the folder exists, may be written to, and its medium is plugged in.",
                  error);
      case SQLITE_IOERR ->
          isFull(file)
              ? full(file, what, error)
              : new LedgerException(
                  "LEDGER-IO",
                  what,
                  "The disk that holds " + file + " reports an error.",
                  "Check that its medium is plugged in; then open the ledger again, or go on with a"
                      + " copy of the event folder on another disk.",
                  error);
      case SQLITE_CORRUPT, SQLITE_NOTADB -> damaged(file, what, error);
      default ->
          new LedgerException(
              "LEDGER-UNEXPECTED",
              what,
              "The database answers: " + error.getMessage() + ".",
              "Note the code and this text, then open the ledger again.",
              error);
    };
  }

  private static LedgerException full(Path file, String what, SQLException error) {
    return new LedgerException(
        "LEDGER-DISK-FULL",
        what,
        "The disk that holds " + file + " is full.",
        "Make room on it (move films, pictures or old events away), then try again.",
        error);
  }

  /** Where the index beside the ledger does not fit, the database speaks of an error, not of it. */
  private static boolean isFull(Path file) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      return folder != null && Files.getFileStore(folder).getUsableSpace() < INDEX;
    } catch (IOException e) {
      // A disk that cannot even be asked is not known to be full; the database's answer is told
      return false;
    }
  }

  private static boolean isProtected(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder != null && Files.isDirectory(folder) && !Files.isWritable(folder);
  }

  private static LedgerException readOnly(Path file, String what, SQLException error) {
    return new LedgerException(
        "LEDGER-READ-ONLY",
        what,
        file + " or its folder may only be read.",
        "Release the medium's write protection, or have its owner allow writing.",
        error);
  }

  private static LedgerException damaged(Path file, String what, SQLException error) {
    return new LedgerException(
        "LEDGER-DAMAGED",
        what,
        file + " is damaged or was cut: the database cannot read it.",
        "Keep the file as it is, for evidence; go on with the latest sound copy.",
        error);
  }

  private static SQLiteErrorCode primary(SQLException error) {
    if (!(error instanceof SQLiteException sqlite)) {
      return SQLiteErrorCode.UNKNOWN_ERROR;
    }
    return SQLiteErrorCode.getErrorCode(sqlite.getResultCode().code & PRIMARY_CODE);
  }

  private static boolean isHeadMoved(SQLException error) {
    return error instanceof SQLiteException sqlite
        && sqlite.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_TRIGGER;
  }
}
