package lanewarden.ledger;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** The rows of a ledger's table. Does not close the file. Owned by one thread. */
final class TableRows implements RowSource {
  private static final String WHAT = "The verification ended early.";

  private final LedgerFile file;
  private final RowBatches rows;

  TableRows(LedgerFile file) throws LedgerException {
    this.file = file;
    this.rows = file.rows();
  }

  @Override
  public List<String> differences() throws LedgerException {
    return file.differences();
  }

  @Override
  public List<Row> next() throws LedgerException {
    try {
      return rows.next();
    } catch (SQLException failed) {
      throw file.fault(WHAT, failed);
    }
  }

  @Override
  public Optional<? extends Row> row(long sequence) throws LedgerException {
    return file.row(sequence);
  }

  @Override
  public void close() throws LedgerException {
    try {
      rows.close();
    } catch (SQLException failed) {
      throw file.fault(WHAT, failed);
    }
  }
}
