package lanewarden.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;

/**
 * The log beside a ledger that is written. What is committed stands in it first, and lasts only
 * while the log lies there under its name.
 *
 * @param file the log
 * @param identity of the file as the writer opened it, where the system has such a thing
 */
record KeptLog(Path file, Optional<Object> identity) {

  /** The log of a ledger that a connection has begun to use. */
  static KeptLog of(Path ledger) {
    Path log = ledger.resolveSibling(ledger.getFileName() + "-wal");
    return new KeptLog(log, identity(log));
  }

  private static Optional<Object> identity(Path log) {
    try {
      return Optional.ofNullable(Files.readAttributes(log, BasicFileAttributes.class).fileKey());
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /**
   * Where another program deleted the log, believing that nobody uses it, brings what was committed
   * into the ledger file itself.
   *
   * @throws SQLException if that cannot be done now
   */
  void keep(Connection connection) throws SQLException {
    if (Files.exists(file) && identity(file).equals(identity)) {
      return;
    }
    try (Statement statement = connection.createStatement();
        ResultSet done = statement.executeQuery("PRAGMA wal_checkpoint(TRUNCATE)")) {
      if (!done.next() || done.getInt(1) != 0) {
        throw new SQLException("another program deleted " + file + " and keeps the ledger busy");
      }
    }
  }
}
