package lanewarden.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteException;

/**
 * A ledger file opened for reading, beside a writer if there is one.
 *
 * <p>Where the database cannot work in the file's own folder, as on a write-protected stick or a
 * full disk, it reads a copy in the system's temporary folder. Owned by one thread at a time.
 */
final class LedgerFile implements AutoCloseable {
  private final Path file;
  private final Connection connection;
  private final @Nullable Path copy;
  private final Schema schema = new Schema();

  private LedgerFile(Path file, Connection connection, @Nullable Path copy) {
    this.file = file;
    this.connection = connection;
    this.copy = copy;
  }

  /** Opens a file after checking that it is a whole Lanewarden ledger of a known format. */
  static LedgerFile open(Path file, String what) throws LedgerException {
    FileHeader.check(file, what);
    LedgerFile opened;
    try {
      opened = inPlace(file);
    } catch (SQLException failed) {
      if (!isFoldersFault(failed) || WrittenHere.is(file)) {
        throw StorageFault.of(file, what, failed);
      }
      opened = inCopy(file, what);
    }
    try {
      opened.checkMark(what);
      return opened;
    } catch (SQLException failed) {
      throw opened.closing(StorageFault.of(file, what, failed));
    } catch (LedgerException refused) {
      throw opened.closing(refused);
    }
  }

  private static LedgerFile inPlace(Path file) throws SQLException {
    Connection connection = Sqlite.reader(file);
    try {
      // The first read shows whether the database can work here.
      Schema.number(connection, "schema_version");
      return new LedgerFile(file, connection, null);
    } catch (SQLException failed) {
      throw Sqlite.closing(connection, failed);
    }
  }

  private static boolean isFoldersFault(SQLException failed) {
    if (!(failed instanceof SQLiteException sqlite)) {
      return false;
    }
    String code = sqlite.getResultCode().name();
    // The last is what a reader meets on a full disk: it cannot make its index of the log
    return code.startsWith("SQLITE_CANTOPEN")
        || code.startsWith("SQLITE_READONLY")
        || code.startsWith("SQLITE_IOERR_SHM");
  }

  private static LedgerFile inCopy(Path file, String what) throws LedgerException {
    try {
      Path folder = Files.createTempDirectory("lanewarden-reading");
      Path copy = folder.resolve("copy.ledger");
      Files.copy(file, copy);
      Path log = file.resolveSibling(file.getFileName() + "-wal");
      if (Files.exists(log)) {
        Files.copy(log, folder.resolve("copy.ledger-wal"));
      }
      return new LedgerFile(file, Sqlite.reader(copy), copy);
    } catch (IOException failed) {
      throw new LedgerException(
          "LEDGER-IO",
          what,
          file + " could not be copied for reading; the system says: " + failed + ".",
          "Copy the event folder to a disk that can be written to, and try there.",
          failed);
    } catch (SQLException failed) {
      throw StorageFault.of(file, what, failed);
    }
  }

  private void checkMark(String what) throws SQLException, LedgerException {
    if (Schema.number(connection, "application_id") != Schema.APPLICATION_ID) {
      throw FileHeader.foreign(file, what, "it does not carry the ledger's mark");
    }
    long format = Schema.number(connection, "user_version");
    if (format > Schema.FORMAT) {
      throw new LedgerException(
          "LEDGER-NEWER",
          what,
          file + " says it has format " + format + "; this Lanewarden knows " + Schema.FORMAT + ".",
          "Use the newer Lanewarden that wrote it. If none did, somebody changed that number: keep"
              + " the file for evidence, and verify an export or a copy made earlier.");
    }
    if (format != Schema.FORMAT || !schema.hasTable(connection)) {
      throw FileHeader.foreign(file, what, "its table is not the one of format 1");
    }
  }

  private LedgerException closing(LedgerException refused) {
    try {
      close();
    } catch (LedgerException also) {
      refused.addSuppressed(also);
    }
    return refused;
  }

  LedgerException fault(String what, SQLException failed) {
    return StorageFault.of(file, what, failed);
  }

  /** What differs from the schema as made. */
  List<String> differences() throws LedgerException {
    try {
      return schema.differences(connection);
    } catch (SQLException failed) {
      throw StorageFault.of(file, "The ledger's guards were not read.", failed);
    }
  }

  /** All rows, in order, as of now. */
  RowBatches rows() throws LedgerException {
    try {
      return new RowBatches(connection);
    } catch (SQLException failed) {
      throw StorageFault.of(file, "The ledger's entries were not read.", failed);
    }
  }

  /** One row once more. */
  Optional<Row.Stored> row(long sequence) throws LedgerException {
    try {
      return RowBatches.one(connection, sequence);
    } catch (SQLException failed) {
      throw StorageFault.of(file, "Entry " + sequence + " was not read.", failed);
    }
  }

  /** The last row as the file has it now; nothing where damage hides it. */
  Optional<Head> head() {
    String last = "SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1";
    try (PreparedStatement statement = connection.prepareStatement(last);
        ResultSet row = statement.executeQuery()) {
      byte[] hash = row.next() ? row.getBytes(2) : null;
      return hash != null && hash.length == Sha256.LENGTH
          ? Optional.of(new Head(row.getLong(1), new Sha256(hash)))
          : Optional.empty();
    } catch (SQLException damaged) {
      // Whoever reads the whole file is told of the damage; here only a name is asked for
      return Optional.empty();
    }
  }

  @Override
  public void close() throws LedgerException {
    try {
      connection.close();
      if (copy != null) {
        discard(copy);
      }
    } catch (SQLException failed) {
      throw StorageFault.of(file, "The ledger was read, but not closed.", failed);
    } catch (IOException failed) {
      throw new LedgerException(
          "LEDGER-IO",
          "The ledger was read, but its temporary copy was not deleted.",
          "The system says: " + failed + ".",
          "Delete the folder " + copy + " is in.",
          failed);
    }
  }

  private static void discard(Path copy) throws IOException {
    Path folder = copy.resolveSibling(".").normalize();
    List<Path> files = new ArrayList<>();
    try (var inside = Files.list(folder)) {
      inside.forEach(files::add);
    }
    for (Path each : files) {
      Files.delete(each);
    }
    Files.delete(folder);
  }
}
