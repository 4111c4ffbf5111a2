package lanewarden.kiosk;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.Station;
import lanewarden.station.Surroundings;

/**
 * A long simulated line at the real screens, at ten times the speed of archers: whether memory
 * stays level, and whether anything is written that nobody expected.
 *
 * <p>Argument: minutes of the archers' time; 120 if none. Prints the heap in use after a collection
 * ten times on the way.
 */
public final class LongLine {
  private static final double PACE = 0.1;
  private static final int LOOKS = 10;

  private LongLine() {}

  /** Ends with 1 if something unexpected was written or the ledger is not sound. */
  public static void main(String[] arguments) throws Exception {
    int minutes = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 120;
    Booth.startToolkit();
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    PrintStream talk = System.err;
    EventFolder event = FullDay.morning();
    ExecutorService work = Executors.newCachedThreadPool();
    boolean good;
    try {
      System.setErr(new PrintStream(written, true, StandardCharsets.UTF_8));
      List<Long> heaps = walk(event, Duration.ofMinutes(minutes), work);
      System.setErr(talk);
      LedgerInspection found = LedgerInspection.of(event.path(), List.of());
      String unexpected = written.toString(StandardCharsets.UTF_8);
      good = found.sound() && unexpected.isEmpty();
      System.out.printf(
          Locale.ROOT,
          "heap in use, MB: first %d, last %d, most %d; ledger sound: %s; written beside: %s%n",
          heaps.get(0) >> 20,
          heaps.get(heaps.size() - 1) >> 20,
          heaps.stream().mapToLong(h -> h).max().orElseThrow() >> 20,
          found.sound() ? "yes" : "NO",
          unexpected.isEmpty() ? "nothing" : unexpected);
    } finally {
      System.setErr(talk);
      FullDay.delete(event);
    }
    work.shutdown();
    Platform.exit();
    System.exit(good ? 0 : 1);
  }

  private static List<Long> walk(EventFolder event, Duration archers, ExecutorService work)
      throws Exception {
    Surroundings here = FullDay.here();
    ExecutorService desk = Executors.newSingleThreadExecutor();
    List<Throwable> faults = new ArrayList<>();
    Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> faults.add(thrown));
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), PACE, here)) {
      Front front =
          Booth.call(
              () ->
                  FullDay.shown(
                      line,
                      event,
                      new Front.Threads(desk, work, work, work, Platform::runLater, here)));
      Station station = line.station();
      station.signIn(Booth.OFFICIAL, Booth.PASSPHRASE.toCharArray());
      List<Long> heaps = new ArrayList<>();
      long begun = System.nanoTime();
      long whole = (long) (archers.toNanos() * PACE);
      int bib = 1_000;
      while (System.nanoTime() - begun < whole) {
        station.call("" + bib);
        line.awaitArrows(Duration.ofSeconds(10));
        if (station.view().check().filter(c -> c.outcome().isPresent()).isPresent()) {
          station.next();
        } else {
          station.endCheck("the archer left the line");
        }
        bib = bib == 999 + FullDay.COMPETITORS ? 1_000 : bib + 1;
        if ((System.nanoTime() - begun) * LOOKS / whole >= heaps.size() + 1) {
          heaps.add(heap());
          System.out.printf(
              Locale.ROOT,
              "%.0f s: head %s, heap in use %d MB%n",
              (System.nanoTime() - begun) / 1e9,
              station.view().head().shortForm(),
              heaps.get(heaps.size() - 1) >> 20);
        }
      }
      if (!faults.isEmpty()) {
        throw new IllegalStateException("nobody expected this", faults.get(0));
      }
      Booth.call(
          () -> {
            front.official().getWindow().hide();
            front.board().getWindow().hide();
            return true;
          });
      return heaps;
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(null);
      desk.shutdown();
    }
  }

  private static long heap() throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      System.gc();
      TimeUnit.MILLISECONDS.sleep(50);
    }
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }
}
