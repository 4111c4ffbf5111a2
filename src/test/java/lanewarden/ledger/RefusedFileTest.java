package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no ledger, or not a whole one. */
class RefusedFileTest {
  @TempDir Path folder;
  Path file;

  @BeforeEach
  void prepare() {
    file = folder.resolve("event.ledger");
  }

  private void refused(String code) throws Exception {
    byte[] before = Files.readAllBytes(file);
    LedgerException opening =
        assertThrows(LedgerException.class, () -> new SampleLedger(file).open());
    LedgerException verifying = assertThrows(LedgerException.class, () -> Verification.of(file));
    assertEquals(List.of(code, code), List.of(opening.code(), verifying.code()));
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void refusesAnEmptyFile() throws Exception {
    Files.createFile(file);
    refused("LEDGER-EMPTY");
  }

  @Test
  void refusesAFileThatIsNoDatabase() throws Exception {
    Files.writeString(file, "bib;name;division\n".repeat(100));
    refused("LEDGER-FOREIGN");
  }

  @Test
  void refusesAnotherProgramsDatabase() throws Exception {
    execute("CREATE TABLE entry (seq INTEGER PRIMARY KEY, jws TEXT)");
    refused("LEDGER-FOREIGN");
  }

  @Test
  void refusesAnotherTableUnderOurMark() throws Exception {
    execute("CREATE TABLE entry (seq INTEGER PRIMARY KEY, prev, hash, jws)");
    execute("PRAGMA application_id = " + Schema.APPLICATION_ID);
    execute("PRAGMA user_version = 1");
    refused("LEDGER-FOREIGN");
  }

  @Test
  void refusesANewerFormat() throws Exception {
    new SampleLedger(file).with(1);
    execute("PRAGMA user_version = 2");
    refused("LEDGER-NEWER");
  }

  @Test
  void refusesACutFile() throws Exception {
    byte[] whole = Files.readAllBytes(new SampleLedger(file).with(30).file);
    for (int length : new int[] {whole.length - 1, whole.length / 2, 4096, 100, 50, 16}) {
      Files.write(file, Arrays.copyOf(whole, length));
      refused("LEDGER-CUT");
    }
  }

  @Test
  void findsWhatIsMissingWhenAPageIsOverwritten() throws Exception {
    new SampleLedger(file).with(60);
    byte[] whole = Files.readAllBytes(file);
    int page = 4096;
    // The page after the first three is one of the table's leaves.
    Arrays.fill(whole, 5 * page, 6 * page, (byte) 0);
    Files.write(file, whole);
    Verification verification = Verification.of(file);
    assertTrue(
        verification.faults().stream()
            .anyMatch(fault -> fault.kind() == LedgerFault.Kind.UNREADABLE_ROW));
    assertTrue(verification.entries() > 40, "rows beyond the damage are read too");
  }

  @Test
  void refusesAFolder() throws Exception {
    Files.createDirectory(file);
    assertEquals(
        "LEDGER-MISSING",
        assertThrows(LedgerException.class, () -> new SampleLedger(file).open()).code());
    assertEquals(
        "LEDGER-EXISTS",
        assertThrows(LedgerException.class, () -> new SampleLedger(file).create()).code());
  }

  @Test
  void saysSoWhenTheFolderIsMissing() {
    SampleLedger nowhere = new SampleLedger(folder.resolve("missing").resolve("event.ledger"));
    LedgerException refused = assertThrows(LedgerException.class, nowhere::create);
    assertEquals("LEDGER-CANNOT-OPEN", refused.code());
    assertFalse(Files.exists(nowhere.file));
  }

  /** The superuser may write anywhere, so this needs an ordinary account to say anything. */
  @Test
  void saysSoWhenTheFolderMayOnlyBeRead() throws Exception {
    SampleLedger sample = new SampleLedger(file).with(2);
    Files.delete(folder.resolve("event.ledger.lock"));
    assertTrue(folder.toFile().setWritable(false));
    try {
      Assumptions.assumeFalse(
          Files.isWritable(folder), "this account may write into read-only folders");
      assertEquals("LEDGER-READ-ONLY", assertThrows(LedgerException.class, sample::open).code());
      assertTrue(Verification.of(file).sound());
    } finally {
      assertTrue(folder.toFile().setWritable(true));
    }
  }

  /** A folder where the name of the database's shared memory is taken stands for a closed one. */
  @Test
  void readsACopyWhereTheDatabaseCannotWorkInPlace() throws Exception {
    new SampleLedger(file).with(2);
    Files.createDirectory(folder.resolve("event.ledger-shm"));
    byte[] before = Files.readAllBytes(file);
    Verification verification = Verification.of(file);
    assertEquals(List.of(), verification.faults());
    assertEquals(4, verification.entries());
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  private void execute(String sql) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
