package lanewarden.ledger;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/** Opens connections with the settings that a ledger's promises rest on. */
final class Sqlite {
  /** How long a write waits for another program's lock before it gives up, in milliseconds. */
  private static final int PATIENCE = 1500;

  private Sqlite() {}

  /**
   * A connection that writes. It never makes the file.
   *
   * <p>{@code recursive_triggers} is per connection; without it INSERT OR REPLACE deletes a row
   * unseen by the delete trigger.
   */
  static Connection writer(Path file) throws SQLException {
    Connection connection = connect(file, SQLiteOpenMode.READWRITE, PATIENCE);
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA recursive_triggers = on");
      statement.execute("PRAGMA journal_mode = wal");
      statement.execute("PRAGMA synchronous = full");
    } catch (SQLException failed) {
      throw closing(connection, failed);
    }
    return connection;
  }

  /**
   * A connection that only reads, also beside a writer, and trusts nothing in the file.
   *
   * <p>Where a log holds entries, it is opened so that it cannot even tidy up: a log left by a
   * killed station stays as it is. Where there is none, the right to write, which is never used for
   * content, lets the database remove its own helping files again when it is closed.
   */
  static Connection reader(Path file) throws SQLException {
    boolean log = file.resolveSibling(file.getFileName() + "-wal").toFile().length() > 0;
    SQLiteOpenMode mode = log ? SQLiteOpenMode.READONLY : SQLiteOpenMode.READWRITE;
    Connection connection = connect(file, mode, PATIENCE);
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA query_only = on");
      statement.execute("PRAGMA recursive_triggers = on");
      statement.execute("PRAGMA trusted_schema = off");
      statement.execute("PRAGMA cell_size_check = on");
    } catch (SQLException failed) {
      throw closing(connection, failed);
    }
    return connection;
  }

  /** A connection to a lock file, which is made when it is missing; never waits. */
  static Connection lock(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(0);
    return config.createConnection(url(file));
  }

  private static Connection connect(Path file, SQLiteOpenMode mode, int patience)
      throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.resetOpenMode(SQLiteOpenMode.CREATE);
    config.resetOpenMode(SQLiteOpenMode.READWRITE);
    config.setOpenMode(mode);
    config.setBusyTimeout(patience);
    return config.createConnection(url(file));
  }

  /** As a URI, because a plain path with a question mark in it would be cut there. */
  private static String url(Path file) {
    return "jdbc:sqlite:" + file.toAbsolutePath().toUri();
  }

  static SQLException closing(Connection connection, SQLException failed) {
    try {
      connection.close();
    } catch (SQLException also) {
      failed.addSuppressed(also);
    }
    return failed;
  }
}
