package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuietPressTest {
  @TempDir Path folder;

  /** Keeps what would reach the terminal. */
  private static final class Listener extends Handler {
    private final List<String> heard = new ArrayList<>();

    @Override
    public void publish(LogRecord entry) {
      heard.add(entry.getLoggerName() + ": " + entry.getMessage());
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @Test
  void aReportLogsNothing() throws Exception {
    Listener listener = new Listener();
    Logger root = Logger.getLogger("");
    root.addHandler(listener);
    try (ScriptedLedger ledger = DemoSizeLedger.make(folder.resolve("event.ledger"), 1, 2)) {
      PrintedReport.of(ledger.file());
    } finally {
      root.removeHandler(listener);
    }
    assertEquals(List.of(), listener.heard);
  }

  @Test
  void aPageThatIsNotWellFormedIsNoPdf() {
    Press press = new Press(new Announcer(progress -> {}), 0, 100);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThrows(
        RuntimeException.class,
        () ->
            press.print(
                "<html><body><p>never closed</body></html>", PrintedReport.MADE, List.of(), out));
    assertEquals(0, out.size(), "nothing half is written");
  }
}
