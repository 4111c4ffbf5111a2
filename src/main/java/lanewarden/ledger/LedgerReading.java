package lanewarden.ledger;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Consumer;

/** Reads the entries of a ledger that was verified when it was opened. */
final class LedgerReading {
  private static final String WHAT = "The ledger's entries were not read to the end.";

  private LedgerReading() {}

  static void read(Path file, Head until, Consumer<? super Entry> reader) throws LedgerException {
    RowExaminer examiner = RowExaminer.ofVerified();
    Sha256 link = Sha256.none();
    try (LedgerFile opened = LedgerFile.open(file, WHAT);
        RowBatches rows = opened.rows()) {
      List<Row> batch = rows.next();
      while (!batch.isEmpty()) {
        for (Finding finding : examiner.examine(batch)) {
          if (finding.row().sequence() > until.sequence()) {
            break;
          }
          Entry entry = follow(file, link, finding);
          link = entry.hash();
          reader.accept(entry);
        }
        batch = rows.next();
      }
    } catch (SQLException failed) {
      throw StorageFault.of(file, WHAT, failed);
    }
    if (!link.equals(until.hash())) {
      throw changed(file);
    }
  }

  private static Entry follow(Path file, Sha256 link, Finding finding) throws LedgerException {
    Entry entry = finding.readable().orElseThrow(() -> changed(file));
    if (!finding.faults().isEmpty() || !entry.previous().equals(link)) {
      throw changed(file);
    }
    return entry;
  }

  private static LedgerException changed(Path file) {
    return new LedgerException(
        "LEDGER-CHANGED",
        WHAT,
        "Another program changed " + file + " since it was opened.",
        "Stop, keep the file for evidence, and verify it to see which entries are concerned.");
  }
}
