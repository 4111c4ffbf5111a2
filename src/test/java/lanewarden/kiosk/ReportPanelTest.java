package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import javafx.scene.control.ProgressBar;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.audit.ReportMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The audit report as asked for on the screens. */
class ReportPanelTest {
  @TempDir Path temp;

  @Test
  void reportIsNamedAfterTheLedgersHeadAndItsPathIsShown() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.press(KeyCode.F8);
      booth.press(KeyCode.ENTER);

      Path pdf =
          booth.folder.path().resolve("audit-" + booth.station.view().head().shortForm() + ".pdf");
      assertTrue(Files.exists(pdf));
      assertEquals("Made: " + pdf.toAbsolutePath(), booth.text("report-words"));
    }
  }

  @Test
  void progressIsShownWhileTheLineGoesOn() throws Exception {
    CountDownLatch half = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    ReportMaker slow =
        (ledger, pdf, progress) -> {
          progress.accept(new ReportMaker.Progress("Checks", 2, 4));
          half.countDown();
          goOn.await();
        };
    try (Booth booth = new Booth(temp, 1280, 800, slow)) {
      booth.pressWithoutWaiting(KeyCode.F8);
      booth.pressWithoutWaiting(KeyCode.ENTER);
      half.await();
      double shown =
          Booth.call(
              () ->
                  ((ProgressBar) booth.front.official().lookup("#report-progress")).getProgress());
      goOn.countDown();
      booth.settle();

      assertEquals(0.5, shown);
      assertTrue(booth.text("report-words").startsWith("Made"));
    }
  }

  @Test
  void reportThatFailsSaysWhyAndCanBeTriedAgain() throws Exception {
    ReportMaker failing =
        (ledger, pdf, progress) -> {
          throw new IOException("disk full");
        };
    try (Booth booth = new Booth(temp, 1280, 800, failing)) {
      booth.press(KeyCode.F8);
      booth.press(KeyCode.ENTER);

      assertEquals("Not made", booth.text("report-words"));
      assertTrue(
          Booth.call(
              () -> booth.front.official().lookup("#report-panel .trouble-card").isVisible()));
    }
  }
}
