package lanewarden.station;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.SimulatedInstrument;
import org.jspecify.annotations.Nullable;

/**
 * Archers who shoot for practice: whoever is called gets arrows, through the simulated instrument.
 *
 * <p>An archer shoots while the check takes shots and an official is on duty, holds when it is
 * decided or waits for something else, and goes on when the official declares a reading void. Bytes
 * come from the capture's section labelled with the bib, from the second check on with {@code
 * bib/check}; where there is none, arrows are invented.
 *
 * <p>Threads: it owns one, on which everything is shot; its methods may be called from any other.
 */
public final class Rehearsal implements AutoCloseable {

  /** Longer than any instrument waits for the rest of a line. */
  private static final Duration SILENCE = Duration.ofSeconds(2);

  private final PracticeGates gates;
  private final SimulatedInstrument instrument;
  private final Optional<Capture> capture;
  private final double pace;
  private final LongSupplier nanos;
  private final Thread thread = new Thread(this::play, "lanewarden rehearsal");

  // Under this object's lock
  private @Nullable LineView latest;
  private long views;
  private long idleSince = -1;
  private boolean ended;

  // Touched by the rehearsal's own thread only
  private long atLine;
  private @Nullable Archer archer;

  private Rehearsal(
      PracticeGates gates, Optional<Capture> capture, double pace, LongSupplier nanos) {
    this.gates = gates;
    this.instrument = gates.first();
    this.capture = capture;
    this.pace = pace;
    this.nanos = nanos;
    thread.setDaemon(true);
  }

  /**
   * Begins to shoot for whoever is called at the station.
   *
   * @param gates what the station listens to
   * @param capture sections by bib, if there are any
   * @param pace 1 takes the capture's time, 0.5 half of it, 0 none
   */
  static Rehearsal start(
      Station station,
      PracticeGates gates,
      Optional<Capture> capture,
      double pace,
      LongSupplier nanos)
      throws StationException {
    if (!Double.isFinite(pace) || pace < 0) {
      throw StationException.misstep(
          "PACE",
          "The rehearsal was not begun.",
          "A pace of " + pace + " makes no sense.",
          "Take 0 for no waiting, 1 for the time that archers take, or something between.");
    }
    Rehearsal rehearsal = new Rehearsal(gates, capture, pace, nanos);
    station.listen(rehearsal::see);
    rehearsal.thread.start();
    return rehearsal;
  }

  /** Waits until nobody at the line has anything to shoot as things stand, or until the end. */
  public synchronized void awaitArchers() throws InterruptedException {
    while (idleSince != views && !ended) {
      wait();
    }
  }

  /** Sends the archers home; the instrument stays as it is. */
  @Override
  public synchronized void close() {
    ended = true;
    notifyAll();
  }

  private synchronized void see(LineView view) {
    latest = view;
    views++;
    notifyAll();
  }

  /** What was to be seen at one moment. */
  private record Moment(long number, Optional<CheckView> open) {}

  private void play() {
    try {
      while (!isEnded()) {
        Moment now = now();
        if (now.open().isEmpty() || !shootFor(now.open().get())) {
          idle(now.number());
        }
      }
    } catch (InterruptedException e) {
      // Asked to end in the middle of a wait: there is nothing to finish
      Thread.currentThread().interrupt();
    }
  }

  private synchronized boolean isEnded() {
    return ended;
  }

  private synchronized Moment now() {
    LineView view = latest;
    Optional<CheckView> open =
        view == null || view.official().isEmpty()
            ? Optional.empty()
            : view.check().filter(CheckView::takesShots);
    return new Moment(views, open);
  }

  private synchronized void idle(long seen) throws InterruptedException {
    idleSince = seen;
    notifyAll();
    while (views == seen && !ended) {
      wait();
    }
  }

  /** Goes one step on with a check; false if its archer has nothing to shoot. */
  private boolean shootFor(CheckView view) throws InterruptedException {
    long number = view.check().number();
    Archer shooter = archer;
    if (shooter == null || atLine != number) {
      shooter = Archer.of(view.check(), capture);
      archer = shooter;
      atLine = number;
    }
    Optional<Archer.Next> next = shooter.next(view);
    if (next.isEmpty()) {
      return false;
    }
    if (isOpenAfter(next.get().afterMillis(), number)) {
      shoot(next.get());
      shooter.came(view);
      if (shooter.next(view).isEmpty()) {
        // The wire falls silent behind the last bytes, which ends a line that was left unfinished
        instrument.pause(SILENCE);
      }
      gates.settle();
    }
    return true;
  }

  private void shoot(Archer.Next next) {
    if (next instanceof Archer.Next.Bytes bytes) {
      instrument.pause(Duration.ofMillis(bytes.afterMillis()));
      instrument.emit(bytes.bytes());
    } else if (next instanceof Archer.Next.Arrow arrow) {
      instrument.shoot(arrow.speed());
    }
  }

  /** Waits as long as an archer does; false as soon as the check is no longer open. */
  private synchronized boolean isOpenAfter(int millis, long number) throws InterruptedException {
    long until = nanos.getAsLong() + (long) (TimeUnit.MILLISECONDS.toNanos(millis) * pace);
    while (!ended && now().open().filter(c -> c.check().number() == number).isPresent()) {
      long left = until - nanos.getAsLong();
      if (left <= 0) {
        return true;
      }
      TimeUnit.NANOSECONDS.timedWait(this, left);
    }
    return false;
  }
}
