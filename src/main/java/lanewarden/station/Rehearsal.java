package lanewarden.station;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.station.VerificationView.Round;
import org.jspecify.annotations.Nullable;

/**
 * Archers who shoot for practice: whoever is called gets arrows, through the simulated instrument.
 *
 * <p>An archer shoots while the check takes shots and an official is on duty, holds when it is
 * decided or waits for something else, and goes on when the official declares a reading void. Bytes
 * come from the capture's section labelled with the bib, from the second check on with {@code
 * bib/check}; where there is none, arrows are invented. While the instrument is verified, the
 * {@link ReferenceBow} shoots; while a practice listens to it, the {@link PracticeArcher} does.
 *
 * <p>Threads: it owns one, on which everything is shot; its methods may be called from any other.
 */
public final class Rehearsal implements AutoCloseable {

  /** Longer than any instrument waits for the rest of a line. */
  private static final Duration SILENCE = Duration.ofSeconds(2);

  private final PracticeGates gates;
  private final ReferenceBow bow;
  private final PracticeArcher practice = new PracticeArcher();
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
    this.bow = new ReferenceBow(capture);
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
    Pace.require(pace, "The rehearsal was not begun.");
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
  private record Moment(
      long number,
      Optional<CheckView> open,
      Optional<Round> verified,
      Optional<PracticeView> practised) {

    boolean isPractised(PracticeView view) {
      return practised.filter(now -> now.changes() == view.changes()).isPresent();
    }

    boolean isOpen(long check) {
      return open.filter(view -> view.check().number() == check).isPresent();
    }

    boolean isVerified(Round round) {
      return verified
          .filter(
              now -> now.number() == round.number() && now.taken().size() == round.taken().size())
          .isPresent();
    }
  }

  private void play() {
    try {
      while (!isEnded()) {
        Moment now = now();
        if (!shoot(now)) {
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
    Optional<LineView> manned =
        Optional.ofNullable(latest).filter(view -> view.official().isPresent());
    return new Moment(
        views,
        manned.flatMap(LineView::check).filter(CheckView::takesShots),
        manned.flatMap(view -> view.verification().running()),
        Optional.ofNullable(latest).map(LineView::practice).filter(PracticeView::listening));
  }

  private synchronized void idle(long seen) throws InterruptedException {
    idleSince = seen;
    notifyAll();
    while (views == seen && !ended) {
      wait();
    }
  }

  /** Goes one step on; false if there is nothing to shoot as things stand. */
  private boolean shoot(Moment now) throws InterruptedException {
    if (now.practised().isPresent()) {
      return shootFor(now.practised().get());
    }
    return now.verified().isPresent()
        ? shootFor(now.verified().get())
        : now.open().isPresent() && shootFor(now.open().get());
  }

  private boolean shootFor(PracticeView view) throws InterruptedException {
    Optional<Archer.Next> next = practice.next(view);
    if (next.isEmpty()) {
      return false;
    }
    if (waited(next.get().afterMillis(), now -> now.isPractised(view))) {
      shoot(next.get());
      practice.came(view);
      gates.settle();
    }
    return true;
  }

  private boolean shootFor(Round round) throws InterruptedException {
    Optional<Archer.Next> next = bow.next(round);
    if (next.isEmpty()) {
      return false;
    }
    if (waited(next.get().afterMillis(), now -> now.isVerified(round))) {
      shoot(next.get());
      bow.came(round);
      instrument.pause(SILENCE);
      gates.settle();
    }
    return true;
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
    if (waited(next.get().afterMillis(), now -> now.isOpen(number))) {
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

  /** Waits as long as an archer does; false as soon as nobody waits for that shot any more. */
  private synchronized boolean waited(int millis, Predicate<Moment> asked)
      throws InterruptedException {
    long until = nanos.getAsLong() + (long) (TimeUnit.MILLISECONDS.toNanos(millis) * pace);
    while (!ended && asked.test(now())) {
      long left = until - nanos.getAsLong();
      if (left <= 0) {
        return true;
      }
      TimeUnit.NANOSECONDS.timedWait(this, left);
    }
    return false;
  }
}
