package lanewarden.kiosk;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import javafx.application.Platform;
import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.look.Typeface;
import lanewarden.station.EventFolder;
import lanewarden.station.Station;

/** The front door of the screens. */
public final class Kiosk {
  private final ReportMaker reports;

  /**
   * @param reports makes the audit report that the official asks for
   */
  public Kiosk(ReportMaker reports) {
    this.reports = reports;
  }

  /**
   * Shows the screens of an open station, and returns when the official's window was closed. The
   * station stays open; what is at the line stays there.
   *
   * @param station stays owned by the caller
   * @param folder where reports are put
   * @param signInHint a line under the passphrase, for a demonstration
   * @throws NoDisplayException if no window can be opened here; then nothing was shown or started
   */
  public void show(Station station, EventFolder folder, Optional<String> signInHint)
      throws NoDisplayException {
    Toolkit toolkit = Toolkit.start();
    ExecutorService desk = Executors.newSingleThreadExecutor(named("kiosk-desk"));
    ExecutorService report = Executors.newSingleThreadExecutor(named("kiosk-report"));
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    CountDownLatch closed = new CountDownLatch(1);
    CompletableFuture<Windows> opened = new CompletableFuture<>();
    try {
      Platform.runLater(
          () -> {
            try {
              Typeface.load();
              Windows windows =
                  Windows.open(
                      station,
                      folder,
                      signInHint,
                      reports,
                      new Front.Threads(desk, report, Platform::runLater),
                      closed::countDown);
              Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> windows.fault(thrown));
              opened.complete(windows);
            } catch (RuntimeException | Error e) {
              opened.completeExceptionally(e);
            }
          });
      opened.get();
      closed.await();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the screens could not be made", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      Platform.runLater(
          () -> {
            // Queued behind the opening, so it is over by then
            if (!opened.isCompletedExceptionally()) {
              opened.join().leave();
            }
          });
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
      desk.shutdown();
      report.shutdown();
      toolkit.leave();
    }
  }

  private static ThreadFactory named(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
