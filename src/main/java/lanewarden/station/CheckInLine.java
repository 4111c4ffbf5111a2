package lanewarden.station;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.Instrument;

/**
 * A station with the instrument that its settings name, or two in series; where that is the
 * simulator, archers rehearse at it.
 *
 * <p>Any thread may call.
 */
public final class CheckInLine implements AutoCloseable {
  private static final long LOOK = 20;

  private final Station station;
  private final Optional<Rehearsal> rehearsal;
  private final LongSupplier nanos;
  private final ProgramLog log;
  private final ScheduledExecutorService watch;

  private CheckInLine(Station station, Optional<Rehearsal> rehearsal, Surroundings here) {
    this.station = station;
    this.rehearsal = rehearsal;
    this.nanos = here.nanos();
    this.log = here.log();
    log.eventOpened(station.view().head().shortForm());
    this.watch = Executors.newSingleThreadScheduledExecutor(CheckInLine::thread);
    ScheduledFuture<?> unused =
        watch.scheduleWithFixedDelay(
            () -> {
              station.lookForTheOfficial();
              station.proceedings().trySigningStop();
            },
            1,
            1,
            TimeUnit.SECONDS);
  }

  /**
   * Opens the station of an event and listens to its instrument.
   *
   * @param port a serial port instead of what the settings say
   * @param pace of the archers of a rehearsal: 1 as captured, 0 without waiting
   * @throws StationException if the folder or its ledger cannot be used
   */
  public static CheckInLine open(
      EventFolder folder, Optional<String> port, double pace, Surroundings here)
      throws StationException {
    if (isRehearsed(folder, port)) {
      return rehearse(folder, pace, here);
    }
    return new CheckInLine(
        open(folder, Ports.open(folder, port, here), here), Optional.empty(), here);
  }

  /** Whether archers rehearse at it, whose readings are invented. */
  static boolean isRehearsed(EventFolder folder, Optional<String> port) throws StationException {
    return port.isEmpty() && folder.settings().kind() == StationSettings.Kind.SIMULATOR;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "official-watch");
    thread.setDaemon(true);
    return thread;
  }

  private static Station open(EventFolder folder, Instrument instrument, Surroundings here)
      throws StationException {
    return Station.open(folder, instrument, here.program(), here.clock(), here.nanos());
  }

  private static CheckInLine rehearse(EventFolder folder, double pace, Surroundings here)
      throws StationException {
    Optional<Capture> capture = folder.rehearsal();
    PracticeGates gates = PracticeGates.of(folder.papers(), here);
    Station station = open(folder, gates.instrument(), here);
    try {
      return new CheckInLine(
          station, Optional.of(Rehearsal.start(station, gates, capture, pace, here.nanos())), here);
    } catch (StationException e) {
      station.close();
      throw e;
    }
  }

  /** The station. */
  public Station station() {
    return station;
  }

  /**
   * Waits for the arrows of the verification that goes on, the check at the line or the practice
   * that listens: until it takes no more of them, or nothing more comes. In a rehearsal that is
   * known; else nothing has come when the line was quiet so long.
   */
  public void awaitArrows(Duration quiet) throws InterruptedException {
    if (rehearsal.isPresent()) {
      rehearsal.get().awaitArchers();
      return;
    }
    LineView seen = station.view();
    long since = nanos.getAsLong();
    while (isOpen(seen) && nanos.getAsLong() - since < quiet.toNanos()) {
      Thread.sleep(LOOK);
      LineView now = station.view();
      if (!now.head().equals(seen.head())
          || now.practice().changes() != seen.practice().changes()) {
        since = nanos.getAsLong();
      }
      seen = now;
    }
  }

  private static boolean isOpen(LineView view) {
    return view.practice().listening()
        || view.verification().running().isPresent()
        || view.check().filter(CheckView::takesShots).isPresent();
  }

  /** Whoever is on duty signs out; a check that runs stays at the line. */
  public void signOut() throws StationException {
    if (station.view().official().isPresent()) {
      station.signOut();
    }
  }

  /** Leaves in order: whoever is on duty signs out, then the ledger is closed. */
  public void leave() throws StationException {
    try {
      signOut();
    } finally {
      close();
    }
  }

  /** Leaves the instrument and the ledger; what is signed stays as it is. */
  @Override
  public void close() throws StationException {
    watch.shutdownNow();
    rehearsal.ifPresent(Rehearsal::close);
    log.eventClosed(station.view().head().shortForm());
    station.close();
  }
}
