package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an append says and leaves behind when the storage fails. */
class StorageTest {
  @TempDir Path folder;
  SampleLedger sample;
  Connection connection;
  Ledger ledger;

  @BeforeEach
  void open() throws Exception {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(1);
    connection = Sqlite.writer(sample.file);
    ledger = over(connection);
  }

  private Ledger over(Connection writer) throws Exception {
    return new Ledger(
        sample.file,
        WriterLock.take(sample.file),
        WrittenHere.begin(sample.file),
        new Store(sample.file, writer),
        Verification.of(sample.file),
        SampleLedger.CLOCK,
        System::nanoTime);
  }

  @AfterEach
  void close() throws LedgerException {
    ledger.close();
  }

  private void pragma(String pragma) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA " + pragma);
    }
  }

  private LedgerException refusedAppend(Draft draft) {
    return assertThrows(
        LedgerException.class,
        () -> ledger.append(sample.official, List.of(SampleLedger.reading(1), draft)));
  }

  @Test
  void saysSoWhenTheDiskIsFullAndGoesOnWhenThereIsRoomAgain() throws Exception {
    Head before = ledger.head();
    pragma("max_page_count = " + Schema.number(connection, "page_count"));
    Draft large = SampleLedger.draft("roster", "{\"text\":\"" + "x".repeat(50_000) + "\"}");
    LedgerException refused = refusedAppend(large);
    assertEquals("LEDGER-DISK-FULL", refused.code());
    assertEquals(before, ledger.head());
    pragma("max_page_count = 1000000");
    assertEquals(4, ledger.append(sample.official, List.of(large)).get(0).sequence());
    assertTrue(Verification.of(sample.file).sound());
  }

  @Test
  void saysSoWhenTheFileMayOnlyBeRead() throws Exception {
    Head before = ledger.head();
    pragma("query_only = on");
    assertEquals("LEDGER-READ-ONLY", refusedAppend(SampleLedger.reading(2)).code());
    assertEquals(before, ledger.head());
    pragma("query_only = off");
    ledger.append(sample.official, List.of(SampleLedger.reading(2)));
  }

  @Test
  void saysSoWhenAnotherProgramHoldsTheFile() throws Exception {
    pragma("busy_timeout = 50");
    try (Connection other = Sqlite.writer(sample.file);
        Statement statement = other.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      LedgerException refused = refusedAppend(SampleLedger.reading(2));
      assertEquals("LEDGER-BUSY", refused.code());
      for (String text : List.of(refused.what(), refused.why(), refused.remedy())) {
        assertTrue(String.valueOf(refused.getMessage()).contains(text) && text.endsWith("."), text);
      }
    }
    assertEquals(
        4, ledger.append(sample.official, List.of(SampleLedger.reading(2))).get(0).sequence());
  }

  @Test
  void refusesToFollowAHeadThatAnotherProgramMoved() throws Exception {
    Entry intruder = TamperedLedger.after(ledger.head(), sample.official, SampleLedger.reading(7));
    try (Connection other = Sqlite.writer(sample.file);
        Store store = new Store(sample.file, other)) {
      store.append(List.of(intruder));
    }
    assertEquals("LEDGER-HEAD-MOVED", refusedAppend(SampleLedger.reading(2)).code());
    assertEquals("LEDGER-HEAD-UNKNOWN", refusedAppend(SampleLedger.reading(2)).code());
    ledger.close();
    try (Ledger again = sample.open()) {
      assertEquals(intruder.hash(), again.head().hash());
    }
  }

  @Test
  void writesAllDraftsOrNone() throws Exception {
    pragma("max_page_count = " + Schema.number(connection, "page_count"));
    refusedAppend(SampleLedger.draft("roster", "{\"text\":\"" + "x".repeat(50_000) + "\"}"));
    assertEquals(3, Verification.of(sample.file).entries());
  }

  @Test
  void takesAnEntryForWrittenWhenTheFileSaysSoThoughTheCommitFailed() throws Exception {
    ledger.close();
    ledger = over(failingAfterCommit(Sqlite.writer(sample.file)));
    LedgerException unconfirmed = refusedAppend(SampleLedger.reading(2));
    assertEquals("LEDGER-UNCONFIRMED", unconfirmed.code());
    assertEquals(5, ledger.head().sequence());
    assertEquals(List.of(4L, 5L), unconfirmed.standing().stream().map(Entry::sequence).toList());
    assertEquals(ledger.head().hash(), unconfirmed.standing().get(1).hash());
    assertEquals(ledger.head(), Verification.of(sample.file).head().orElseThrow());
    assertEquals(
        6, ledger.append(sample.official, List.of(SampleLedger.reading(3))).get(0).sequence());
    assertTrue(Verification.of(sample.file).sound());
  }

  @Test
  void countsAnEnrolmentThatIsWrittenThoughTheCommitFailed() throws Exception {
    ledger.close();
    ledger = over(failingAfterCommit(Sqlite.writer(sample.file)));
    SigningKey birch = SigningKey.generate(new SecureRandom());
    assertThrows(
        LedgerException.class,
        () -> ledger.enrol(sample.organizer, birch.publicKey(), "Official Birch"));
    assertEquals(2, ledger.officials().size());
    ledger.append(birch, List.of(SampleLedger.reading(3)));
    assertTrue(Verification.of(sample.file).sound());
  }

  /** A JDBC connection whose first COMMIT is carried out and then reported as failed. */
  private static Connection failingAfterCommit(Connection real) {
    boolean[] failed = new boolean[1];
    return (Connection)
        Proxy.newProxyInstance(
            Connection.class.getClassLoader(),
            new Class<?>[] {Connection.class},
            (self, method, arguments) -> {
              Object result = invoke(real, method, arguments);
              boolean commit = result instanceof PreparedStatement && "COMMIT".equals(arguments[0]);
              return commit ? failingOnce((PreparedStatement) result, failed) : result;
            });
  }

  private static Object failingOnce(PreparedStatement real, boolean[] failed) {
    return Proxy.newProxyInstance(
        PreparedStatement.class.getClassLoader(),
        new Class<?>[] {PreparedStatement.class},
        (self, method, arguments) -> {
          Object result = invoke(real, method, arguments);
          if (method.getName().equals("execute") && !failed[0]) {
            failed[0] = true;
            throw new SQLException("the disk went away");
          }
          return result;
        });
  }

  private static Object invoke(Object target, java.lang.reflect.Method method, Object[] arguments)
      throws Throwable {
    try {
      return method.invoke(target, arguments);
    } catch (InvocationTargetException wrapped) {
      throw wrapped.getCause();
    }
  }

  @Test
  void setsEveryConnectionUpForDurability() throws SQLException {
    assertEquals(2, Schema.number(connection, "synchronous"));
    assertEquals(1, Schema.number(connection, "recursive_triggers"));
    assertEquals(Schema.APPLICATION_ID, Schema.number(connection, "application_id"));
    assertEquals(Schema.FORMAT, Schema.number(connection, "user_version"));
    try (Statement statement = connection.createStatement();
        var mode = statement.executeQuery("PRAGMA journal_mode")) {
      assertEquals("wal", mode.getString(1));
    }
    assertFalse(connection.isReadOnly());
  }
}
