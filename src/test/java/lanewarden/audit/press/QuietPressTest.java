package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import lanewarden.audit.AuditReport;
import lanewarden.audit.DemoSizeLedger;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
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
  void aPageThatIsNotWellFormedIsNoPdf() throws Exception {
    assertNoPdf("<p>never closed", "not written as it must be");
  }

  @Test
  void aPageWithAnElementThatIsNotKnownIsNoPdf() throws Exception {
    assertNoPdf("<marquee>passes by</marquee>", "the element marquee");
  }

  private static void assertNoPdf(String body, String why) throws Exception {
    Press press = new Press(AuditReport.class, new Announcer(progress -> {}), 0, 100);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String html =
        "<html><head><link rel=\"stylesheet\" href=\"report.css\"/></head><body>"
            + body
            + "</body></html>";
    try (Typefaces faces = Typefaces.open()) {
      IllegalStateException fault =
          assertThrows(
              IllegalStateException.class,
              () -> press.print(html, faces, PrintedReport.MADE, List.of(), out));
      assertTrue(String.valueOf(fault.getMessage()).contains(why), fault.getMessage());
    }
    assertEquals(0, out.size(), "nothing half is written");
  }
}
