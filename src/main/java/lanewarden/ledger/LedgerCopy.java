package lanewarden.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A ledger file that is filled with entries signed elsewhere, in a folder of its own beside its
 * place, and then moved there. Owned by one thread.
 */
final class LedgerCopy implements Consumer<Examined>, AutoCloseable {
  private static final int MOST_WAITING = 1000;

  private final Path ledger;
  private final Path workshop;
  private final Path draft;
  private final List<Entry> waiting = new ArrayList<>(MOST_WAITING);
  private @Nullable Store store;
  private @Nullable SQLException failed;
  private boolean sound = true;

  private LedgerCopy(Path ledger, Path workshop) {
    this.ledger = ledger;
    this.workshop = workshop;
    this.draft = workshop.resolve("draft.ledger");
  }

  static LedgerCopy at(Path ledger) throws LedgerException {
    if (Files.exists(ledger)) {
      throw new LedgerException(
          "LEDGER-EXISTS",
          what(ledger),
          "There is something at " + ledger + " already, and a ledger is never overwritten.",
          "Choose another name.");
    }
    try {
      Path folder = ledger.toAbsolutePath().resolveSibling("");
      return new LedgerCopy(ledger, Files.createTempDirectory(folder, ".import-"));
    } catch (IOException unwritable) {
      throw cannotMake(ledger, unwritable);
    }
  }

  private static String what(Path ledger) {
    return "The ledger " + ledger + " was not made.";
  }

  private static LedgerException cannotMake(Path ledger, IOException why) {
    return new LedgerException(
        "LEDGER-CANNOT-MAKE",
        what(ledger),
        "The system says: " + why + ".",
        "Check that the folder exists, is not full and may be written to.",
        why);
  }

  /** Takes an entry as long as all before it were sound: behind a fault nothing is kept. */
  @Override
  public void accept(Examined examined) {
    sound &= examined.sound() && failed == null;
    if (!sound) {
      return;
    }
    waiting.add(examined.entry());
    if (waiting.size() == MOST_WAITING) {
      flush();
    }
  }

  private void flush() {
    try {
      if (store == null) {
        store = begin(waiting.remove(0));
      }
      store.append(waiting);
      waiting.clear();
    } catch (SQLException full) {
      failed = full;
    } catch (IOException unwritable) {
      failed = new SQLException(unwritable.toString(), unwritable);
    }
  }

  private Store begin(Entry opening) throws SQLException, IOException {
    Files.createFile(draft);
    Connection connection = Sqlite.writer(draft);
    try {
      Store.make(connection, opening);
      return new Store(draft, connection);
    } catch (SQLException refused) {
      throw Sqlite.closing(connection, refused);
    }
  }

  /** Puts the finished file in its place. */
  void deliver() throws LedgerException {
    if (failed == null) {
      flush();
    }
    finish();
    if (failed != null) {
      throw StorageFault.of(ledger, what(ledger), failed);
    }
    try {
      // Without the right to replace: what came there meanwhile stays
      Files.move(draft, ledger);
    } catch (IOException unmoved) {
      throw cannotMake(ledger, unmoved);
    }
  }

  /** Closing the last connection moves everything from the log into the file itself. */
  private void finish() {
    Store open = store;
    store = null;
    if (open == null) {
      return;
    }
    try {
      open.close();
    } catch (SQLException unclosed) {
      failed = failed == null ? unclosed : failed;
    }
  }

  @Override
  public void close() throws LedgerException {
    finish();
    try (Stream<Path> left = Files.list(workshop)) {
      for (Path each : left.toList()) {
        Files.delete(each);
      }
      Files.delete(workshop);
    } catch (IOException stays) {
      throw new LedgerException(
          "LEDGER-IO",
          "A temporary folder was not deleted.",
          "The system says: " + stays + ".",
          "Delete " + workshop + ".",
          stays);
    }
  }
}
