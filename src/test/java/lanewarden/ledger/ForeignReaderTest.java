package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Another program looks into the ledger that is written here, and closes it again. Whichever closes
 * a database last deletes its log (SQLite, "Write-Ahead Logging", section 3.2); it takes itself for
 * the last where the writer holds no lock any more.
 */
class ForeignReaderTest {
  private static final long FIRST_SHARED_BYTE = 0x40000000L + 2;

  @TempDir Path folder;
  private SampleLedger sample;
  private Ledger ledger;

  @BeforeEach
  void open() throws Exception {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(0);
    ledger = sample.open();
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private void append(int number) throws LedgerException {
    List<Entry> unused = ledger.append(sample.official, List.of(SampleLedger.reading(number)));
  }

  private Path log() {
    return folder.resolve("event.ledger-wal");
  }

  private String asked(String question) throws IOException, InterruptedException {
    Process reader =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                ReadingProgram.class.getName(),
                sample.file.toString(),
                question)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String answer = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, reader.waitFor());
    return answer.strip();
  }

  /** What the database does for a program that takes itself for the last. */
  private void closeAsTheLast() throws Exception {
    assertEquals("0", asked("PRAGMA wal_checkpoint(TRUNCATE)"));
    Files.delete(log());
    Files.delete(folder.resolve("event.ledger-shm"));
  }

  /** The files as they would lie there if this program were killed now. */
  private Verification ifKilledNow() throws Exception {
    Path copy = Files.createDirectory(folder.resolve("killed")).resolve("event.ledger");
    Files.copy(sample.file, copy);
    if (Files.exists(log())) {
      Files.copy(log(), copy.resolveSibling("event.ledger-wal"));
    }
    return Verification.of(copy);
  }

  /** The shared lock that says to others that the database is in use (SQLite, os.h). */
  private long locksHeld() throws IOException {
    String mine =
        " %d [0-9a-f:]+:%d %d "
            .formatted(
                ProcessHandle.current().pid(),
                Files.getAttribute(sample.file, "unix:ino"),
                FIRST_SHARED_BYTE);
    return Files.readAllLines(Path.of("/proc/locks")).stream()
        .filter(line -> Pattern.compile(mine).matcher(line).find())
        .count();
  }

  @Test
  @EnabledOnOs(value = OS.LINUX, disabledReason = "only there a program may see its locks")
  void whileTheLedgerIsReadHereTooOthersSeeThatItIsInUse() throws Exception {
    append(1);
    assertEquals(1, locksHeld());
    assertEquals(3, ledger.entries().size());
    assertTrue(Verification.of(sample.file).sound());
    assertEquals(Optional.of(ledger.head()), Head.of(sample.file));
    assertEquals("3", asked("SELECT count(*) FROM entry"));
    assertEquals(1, locksHeld());
    append(2);
    assertEquals(Optional.of(ledger.head()), ifKilledNow().head());
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "nobody can delete a file in use there")
  void whereTheLogWasDeletedAllTheSameNoEntryIsLost() throws Exception {
    append(1);
    closeAsTheLast();
    append(2);
    assertEquals("4", asked("SELECT count(*) FROM entry"));
    append(3);
    assertEquals(Optional.of(ledger.head()), ifKilledNow().head());
    append(4);
    ledger.close();
    Verification after = Verification.of(sample.file);
    assertTrue(after.sound(), after.faults().toString());
    assertEquals(6L, after.head().orElseThrow().sequence());
  }
}
