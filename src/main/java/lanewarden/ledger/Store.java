package lanewarden.ledger;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;

/**
 * The writer's side of the table: appends rows, all or none, durably.
 *
 * <p>Its statements are kept prepared. Owned by one thread at a time.
 */
final class Store implements AutoCloseable {
  private final Connection connection;
  private final KeptLog log;
  private Statements statements;

  /** The driver ends a prepared statement when it fails, so after a fault all are made anew. */
  private record Statements(
      PreparedStatement begin,
      PreparedStatement insert,
      PreparedStatement commit,
      PreparedStatement head) {

    static Statements prepare(Connection connection) throws SQLException {
      return new Statements(
          connection.prepareStatement("BEGIN IMMEDIATE"),
          connection.prepareStatement("INSERT INTO entry (seq, prev, hash, jws) VALUES (?,?,?,?)"),
          connection.prepareStatement("COMMIT"),
          connection.prepareStatement("SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1"));
    }

    void close() throws SQLException {
      for (PreparedStatement each : List.of(begin, insert, commit, head)) {
        each.close();
      }
    }
  }

  /** Takes over a writer's connection to a file that has the schema already. */
  Store(Path file, Connection connection) throws SQLException {
    this.connection = connection;
    this.statements = Statements.prepare(connection);
    // The first read makes the log, if there is none yet
    Optional<Head> unused = head();
    this.log = KeptLog.of(file);
  }

  /** Makes table, guards and first entry in one transaction: a file has all of them or none. */
  static void make(Connection connection, Entry opening) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      new Schema().make(connection);
      insert(Statements.prepare(connection).insert(), opening);
      statement.execute("COMMIT");
    }
  }

  /**
   * Appends entries in one transaction; they are on disk when it returns.
   *
   * <p>The table's guard compares each row's sequence and previous hash with the last row, so an
   * append on a head that moved meanwhile fails as a whole.
   */
  void append(List<Entry> entries) throws SQLException {
    try {
      statements.begin().execute();
      for (Entry entry : entries) {
        insert(statements.insert(), entry);
      }
      statements.commit().execute();
    } catch (SQLException failed) {
      undo(failed);
      throw failed;
    }
    log.keep(connection);
  }

  private static void insert(PreparedStatement insert, Entry entry) throws SQLException {
    insert.setLong(1, entry.sequence());
    insert.setBytes(2, entry.previous().bytes());
    insert.setBytes(3, entry.hash().bytes());
    insert.setString(4, new String(entry.jwsBytes(), StandardCharsets.US_ASCII));
    insert.execute();
  }

  /** Some errors end the transaction by themselves; then this rollback fails, and may. */
  private void undo(SQLException failed) {
    attempt(
        failed,
        () -> {
          try (Statement statement = connection.createStatement()) {
            statement.execute("ROLLBACK");
          }
        });
    Statements spent = statements;
    attempt(failed, () -> statements = Statements.prepare(connection));
    attempt(failed, spent::close);
  }

  private static void attempt(SQLException failed, Step step) {
    try {
      step.take();
    } catch (SQLException also) {
      failed.addSuppressed(also);
    }
  }

  @FunctionalInterface
  private interface Step {
    void take() throws SQLException;
  }

  /** The last row as the file has it now. */
  Optional<Head> head() throws SQLException {
    try (ResultSet row = statements.head().executeQuery()) {
      return row.next()
          ? Optional.of(new Head(row.getLong(1), new Sha256(row.getBytes(2))))
          : Optional.empty();
    }
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
