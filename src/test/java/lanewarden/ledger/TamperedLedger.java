package lanewarden.ledger;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** A ledger file in the hands of someone with a database tool: guards dropped, rows at will. */
final class TamperedLedger implements AutoCloseable {
  final Connection connection;

  TamperedLedger(Path file) throws SQLException {
    connection = DriverManager.getConnection("jdbc:sqlite:" + file);
    // Thousands of small changes, none of which has to survive a power cut.
    execute("PRAGMA synchronous = off");
    execute("DROP TRIGGER IF EXISTS entry_follows_the_head");
    execute("DROP TRIGGER IF EXISTS entry_is_never_changed");
    execute("DROP TRIGGER IF EXISTS entry_is_never_deleted");
  }

  void execute(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  /** Sets one column of one row to these bytes, past every CHECK. */
  void set(long sequence, String column, byte[] bytes) throws SQLException {
    execute("PRAGMA ignore_check_constraints = on");
    String value = column.equals("jws") ? "CAST(? AS TEXT)" : "?";
    try (PreparedStatement update =
        connection.prepareStatement(
            "UPDATE entry SET " + column + " = " + value + " WHERE seq = ?")) {
      update.setBytes(1, bytes);
      update.setLong(2, sequence);
      update.executeUpdate();
    }
  }

  /** Replaces a row by an entry, with columns that agree with it. */
  void put(long row, Entry entry) throws SQLException {
    execute("DELETE FROM entry WHERE seq = " + row);
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT INTO entry VALUES (?, ?, ?, CAST(? AS TEXT))")) {
      insert.setLong(1, row);
      insert.setBytes(2, entry.previous().bytes());
      insert.setBytes(3, entry.hash().bytes());
      insert.setBytes(4, entry.jws());
      insert.executeUpdate();
    }
  }

  /** An entry that follows a head, signed by whoever. */
  static Entry after(Head head, SigningKey signer, Draft draft) {
    return after(head, signer, SampleLedger.STATION, draft);
  }

  static Entry after(Head head, SigningKey signer, String station, Draft draft) {
    BigDecimal seconds = new BigDecimal("1.000000");
    return Entry.sign(signer, head, station, SampleLedger.NOON, seconds, draft);
  }

  /** The faults of a file, without those of its dropped guards. */
  static List<LedgerFault> faults(Path file) throws LedgerException {
    return Verification.of(file).faults().stream()
        .filter(fault -> fault.kind() != LedgerFault.Kind.GUARDS_CHANGED)
        .toList();
  }

  static List<LedgerFault.Kind> kinds(Path file) throws LedgerException {
    return faults(file).stream().map(LedgerFault::kind).toList();
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
