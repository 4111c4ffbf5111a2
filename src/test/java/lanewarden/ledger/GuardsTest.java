package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The table's own guards: a rail against slips of the hand; the signatures are the proof. */
class GuardsTest {
  private static final String ROW =
      "(seq, prev, hash, jws) SELECT 3, prev, hash, 'x' FROM entry WHERE seq = 3";

  @TempDir Path folder;
  SampleLedger sample;

  @BeforeEach
  void prepare() throws LedgerException {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(3);
  }

  private void refuses(Connection connection, String sql) throws SQLException, LedgerException {
    try (connection;
        Statement statement = connection.createStatement()) {
      SQLException refused = assertThrows(SQLException.class, () -> statement.execute(sql));
      assertTrue(String.valueOf(refused.getMessage()).contains("CONSTRAINT"), refused.getMessage());
    }
    Verification after = Verification.of(sample.file);
    assertTrue(after.sound());
    assertEquals(5, after.entries());
  }

  private Connection bare() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + sample.file);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE entry SET jws = 'x' WHERE seq = 3",
        "UPDATE entry SET seq = 9 WHERE seq = 3",
        "DELETE FROM entry WHERE seq = 5",
        "DELETE FROM entry",
        "INSERT OR REPLACE INTO entry " + ROW,
        "REPLACE INTO entry " + ROW,
        "UPDATE OR REPLACE entry SET seq = 4 WHERE seq = 3",
        "INSERT INTO entry " + ROW + " ON CONFLICT (seq) DO UPDATE SET jws = 'x'",
        "INSERT INTO entry VALUES (6, zeroblob(32), zeroblob(32), 'x')",
        "INSERT INTO entry SELECT 7, hash, hash, 'x' FROM entry WHERE seq = 5",
        "INSERT INTO entry SELECT NULL, hash, hash, 'x' FROM entry WHERE seq = 5",
        "INSERT INTO entry SELECT 6, hash, 'text', 'x' FROM entry WHERE seq = 5",
        "INSERT INTO entry SELECT 6, hash, zeroblob(31), 'x' FROM entry WHERE seq = 5",
        "INSERT INTO entry SELECT 6, hash, hash, '' FROM entry WHERE seq = 5",
        "INSERT INTO entry SELECT 6, hash, hash, NULL FROM entry WHERE seq = 5"
      })
  void refuseChangesFromOursAndFromBareConnections(String sql) throws Exception {
    refuses(Sqlite.writer(sample.file), sql);
    refuses(bare(), sql);
  }

  /** Without the setting, REPLACE would delete the old row unseen by the delete guard. */
  @Test
  void refuseReplacingEvenWithoutTheHeadGuard() throws Exception {
    try (Connection bare = bare();
        Statement statement = bare.createStatement()) {
      statement.execute("DROP TRIGGER entry_follows_the_head");
    }
    String sql = "INSERT OR REPLACE INTO entry " + ROW;
    try (Connection ours = Sqlite.writer(sample.file);
        Statement statement = ours.createStatement()) {
      assertThrows(SQLException.class, () -> statement.execute(sql));
      statement.execute("PRAGMA recursive_triggers = off");
      statement.execute(sql);
    }
    assertTrue(!Verification.of(sample.file).sound());
  }
}
