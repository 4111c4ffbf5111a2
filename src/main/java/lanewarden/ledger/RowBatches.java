package lanewarden.ledger;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads the rows of the table in order, in batches of bounded size, around damaged places.
 *
 * <p>Where the database fails, it is asked for each next number in turn; the stretch it cannot read
 * becomes a {@link Row.Unreadable}. Owned by one thread.
 */
final class RowBatches implements AutoCloseable {
  private static final int MOST_ROWS = 256;
  private static final int MOST_BYTES = 1 << 20;

  /** How far to look for the next readable row: a damaged number must not make it endless. */
  private static final long MOST_PROBES = 100_000;

  private static final String COLUMNS = "SELECT seq, prev, hash, jws FROM entry ";

  private static final String FROM = COLUMNS + "WHERE seq >= ? ORDER BY seq";

  private final Connection connection;
  private PreparedStatement select;
  private @Nullable ResultSet rows;
  private long next = Long.MIN_VALUE;
  private boolean ended;

  RowBatches(Connection connection) throws SQLException {
    this.connection = connection;
    this.select = connection.prepareStatement(FROM);
  }

  /** The next rows; none at the end. */
  List<Row> next() throws SQLException {
    List<Row> batch = new ArrayList<>(MOST_ROWS);
    int bytes = 0;
    while (!ended && batch.size() < MOST_ROWS && bytes < MOST_BYTES) {
      Optional<? extends Row> row = read();
      if (row.isEmpty()) {
        ended = true;
      } else {
        batch.add(row.get());
        if (row.get() instanceof Row.Stored stored && stored.jws() != null) {
          bytes += stored.jws().length;
        }
      }
    }
    return batch;
  }

  private Optional<? extends Row> read() throws SQLException {
    try {
      Optional<Row.Stored> row = step();
      row.ifPresent(stored -> next = Math.max(next, stored.sequence() + 1));
      return row;
    } catch (SQLException failed) {
      return Optional.of(around(failed));
    }
  }

  private Optional<Row.Stored> step() throws SQLException {
    if (rows == null) {
      select.setLong(1, next);
      rows = select.executeQuery();
    }
    return rows.next() ? Optional.of(stored(rows)) : Optional.empty();
  }

  /** Finds the first number from which reading works again. */
  private Row.Unreadable around(SQLException failed) throws SQLException {
    long first = Math.max(next, 1);
    long last = Math.min(lastOr(first), first + MOST_PROBES);
    SQLException latest = failed;
    closeRows();
    for (next = first + 1; next <= last; next++) {
      try {
        if (isReadable(next)) {
          return new Row.Unreadable(first, next - 1, String.valueOf(latest.getMessage()));
        }
      } catch (SQLException stillDamaged) {
        latest = stillDamaged;
      }
    }
    ended = true;
    return new Row.Unreadable(first, Math.max(first, last), latest.getMessage() + ", to the end");
  }

  private boolean isReadable(long from) throws SQLException {
    try (PreparedStatement probe = connection.prepareStatement(FROM)) {
      probe.setLong(1, from);
      try (ResultSet row = probe.executeQuery()) {
        return row.next() && stored(row).sequence() >= from;
      }
    }
  }

  /** The last row's number, or a guess where the damage hides that too. */
  private long lastOr(long guess) {
    try (PreparedStatement statement = connection.prepareStatement("SELECT max(seq) FROM entry");
        ResultSet row = statement.executeQuery()) {
      return row.next() ? row.getLong(1) : guess;
    } catch (SQLException damagedToo) {
      return guess;
    }
  }

  /** The driver ends a statement when it fails, so the next try needs a new one. */
  private void closeRows() throws SQLException {
    rows = null;
    select.close();
    select = connection.prepareStatement(FROM);
  }

  static Optional<Row.Stored> one(Connection connection, long sequence) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(COLUMNS + "WHERE seq = ?")) {
      statement.setLong(1, sequence);
      try (ResultSet row = statement.executeQuery()) {
        return row.next() ? Optional.of(stored(row)) : Optional.empty();
      }
    }
  }

  private static Row.Stored stored(ResultSet row) throws SQLException {
    return new Row.Stored(row.getLong(1), row.getBytes(2), row.getBytes(3), row.getBytes(4));
  }

  @Override
  public void close() throws SQLException {
    select.close();
  }
}
