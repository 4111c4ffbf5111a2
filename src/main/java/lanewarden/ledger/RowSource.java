package lanewarden.ledger;

import java.util.List;
import java.util.Optional;

/** Where a verification's rows come from: the table of a ledger, or the lines of an export. */
interface RowSource extends AutoCloseable {

  /** What is not as it was made about the file as a whole, each as a sentence. */
  List<String> differences() throws LedgerException;

  /** The next rows, in their order; none at the end. */
  List<Row> next() throws LedgerException;

  /** One row once more, among those that were read. */
  Optional<? extends Row> row(long sequence) throws LedgerException;

  @Override
  void close() throws LedgerException;
}
