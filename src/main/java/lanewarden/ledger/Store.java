package lanewarden.ledger;

import java.nio.charset.StandardCharsets;
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
  private final PreparedStatement begin;
  private final PreparedStatement insert;
  private final PreparedStatement commit;
  private final PreparedStatement rollback;
  private final PreparedStatement head;

  /** Takes over a writer's connection to a file that has the schema already. */
  Store(Connection connection) throws SQLException {
    this.connection = connection;
    begin = connection.prepareStatement("BEGIN IMMEDIATE");
    insert =
        connection.prepareStatement("INSERT INTO entry (seq, prev, hash, jws) VALUES (?,?,?,?)");
    commit = connection.prepareStatement("COMMIT");
    rollback = connection.prepareStatement("ROLLBACK");
    head = connection.prepareStatement("SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1");
  }

  /** Makes table, guards and first entry in one transaction: a file has all of them or none. */
  static void make(Connection connection, Entry opening) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      new Schema().make(connection);
      new Store(connection).insert(opening);
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
    begin.execute();
    try {
      for (Entry entry : entries) {
        insert(entry);
      }
      commit.execute();
    } catch (SQLException failed) {
      undo(failed);
      throw failed;
    }
  }

  private void insert(Entry entry) throws SQLException {
    insert.setLong(1, entry.sequence());
    insert.setBytes(2, entry.previous().bytes());
    insert.setBytes(3, entry.hash().bytes());
    insert.setString(4, new String(entry.jwsBytes(), StandardCharsets.US_ASCII));
    insert.execute();
  }

  /** After some errors SQLite has rolled back by itself; then this rollback fails, and may. */
  private void undo(SQLException failed) {
    try {
      rollback.execute();
    } catch (SQLException nothingToUndo) {
      failed.addSuppressed(nothingToUndo);
    }
  }

  /** The last row as the file has it now. */
  Optional<Head> head() throws SQLException {
    try (ResultSet row = head.executeQuery()) {
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
