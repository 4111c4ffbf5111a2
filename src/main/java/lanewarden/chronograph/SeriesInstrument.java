package lanewarden.chronograph;

import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import lanewarden.metrology.PairAgreement;
import org.jspecify.annotations.Nullable;

/**
 * Two instruments through which every arrow passes, one behind the other: a shot counts only if
 * both measured it and agree.
 *
 * <p>The reading is the first instrument's, with what the second measured as its companion. What
 * either refuses is passed on. The link is up only while both are; else {@link LinkState#LOST} says
 * which is not, each time that changes. A reading of {@link Source#TYPED} has no second and is
 * passed on as it is.
 *
 * <p>Threads: both instruments keep their own thread and only hand over to the one of this, which
 * pairs and calls the sink.
 */
public final class SeriesInstrument implements Instrument {
  /** How often a reading that waits is looked at. */
  private static final long TICK_MILLIS = 10;

  private final Instrument first;
  private final Instrument second;
  private final String name;
  private final Clock clock;
  private final LongSupplier nanos;
  private final Worker worker;
  private final LinkedBlockingQueue<Consumer<Outlet>> arrived = new LinkedBlockingQueue<>();

  // Touched by the worker only
  private final SeriesPairing pairing;
  private final SeriesLinks links;
  private boolean closing;

  /**
   * @param first whose readings count; not started yet, and closed by this
   * @param second which confirms them; likewise
   * @param agreement how far they may differ
   * @param window how long after one instrument's reading the other's may come
   * @param clock gives the time of refusals
   * @param nanos monotonic nanoseconds, as {@link System#nanoTime}
   * @throws IllegalArgumentException if both are the same, or the window is not above zero
   */
  public SeriesInstrument(
      Instrument first,
      Instrument second,
      PairAgreement agreement,
      Duration window,
      Clock clock,
      LongSupplier nanos) {
    if (first.equals(second)) {
      throw new IllegalArgumentException("an instrument cannot confirm itself");
    }
    if (window.isNegative() || window.isZero()) {
      throw new IllegalArgumentException("the window is above zero, not " + window);
    }
    this.first = first;
    this.second = second;
    this.name = first.name() + " and " + second.name();
    this.clock = clock;
    this.nanos = nanos;
    this.worker = new Worker(name);
    this.pairing = new SeriesPairing(name, first.name(), second.name(), agreement, window, clock);
    this.links = new SeriesLinks(first.name(), second.name());
  }

  @Override
  public String name() {
    return name;
  }

  /** The first instrument's. */
  @Override
  public Source source() {
    return first.source();
  }

  @Override
  public void start(Consumer<Signal> sink) {
    Outlet outlet = new Outlet(sink, clock);
    worker.start(() -> work(outlet));
    try {
      first.start(signal -> arrive(true, signal));
      second.start(signal -> arrive(false, signal));
    } catch (IllegalStateException e) {
      close();
      throw e;
    }
  }

  /**
   * Waits until everything that both told so far is paired and handed on, or until this is closed;
   * a reading whose second has not come goes on waiting. Must not be called from the sink.
   *
   * @throws InterruptedException if the waiting thread is interrupted
   */
  public void settle() throws InterruptedException {
    CountDownLatch reached = new CountDownLatch(1);
    arrived.add(outlet -> reached.countDown());
    worker.await(reached);
  }

  @Override
  public void close() {
    worker.askToEnd();
    // Only now, so that a thread woken by it sees that it is to end
    arrived.add(outlet -> {});
    worker.end();
    // The worker did this too, unless it never ran or this is called from the sink
    first.close();
    second.close();
  }

  /** On the instrument's own thread: when it came counts, not when the sink has time for it. */
  private void arrive(boolean ofFirst, Signal signal) {
    long now = nanos.getAsLong();
    arrived.add(outlet -> take(ofFirst, signal, now, outlet));
  }

  private void work(Outlet outlet) {
    try {
      while (!worker.ended() && !links.over()) {
        @Nullable Consumer<Outlet> next =
            pairing.waits() ? arrived.poll(TICK_MILLIS, TimeUnit.MILLISECONDS) : arrived.take();
        if (next == null) {
          outlet.send(pairing.idle(nanos.getAsLong()));
        } else {
          next.accept(outlet);
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    closing = true;
    first.close();
    second.close();
    // What both said last, a line not finished for example
    for (Consumer<Outlet> next = arrived.poll(); next != null; next = arrived.poll()) {
      next.accept(outlet);
    }
    outlet.send(pairing.end());
    outlet.link(LinkState.CLOSED, name + " are closed.");
  }

  private void take(boolean ofFirst, Signal signal, long now, Outlet outlet) {
    outlet.send(pairing.idle(now));
    if (signal instanceof Signal.Heard heard && heard.reading().source() != Source.TYPED) {
      outlet.send(pairing.take(ofFirst, heard.reading(), now));
    } else if (signal instanceof Signal.LinkChanged changed) {
      links
          .take(ofFirst, changed)
          .filter(told -> !closing && !links.over())
          .ifPresent(outlet::send);
    } else {
      outlet.send(signal);
    }
  }
}
