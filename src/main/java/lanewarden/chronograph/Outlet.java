package lanewarden.chronograph;

import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;

/**
 * Where an instrument's signals leave it.
 *
 * <p>A sink that throws must not take the link down with it: what it threw goes to the thread's
 * uncaught-exception handler, where everything unexpected goes, and the next signal is delivered as
 * usual. For the instrument's own thread.
 */
final class Outlet {
  private final Consumer<Signal> sink;
  private final Clock clock;

  Outlet(Consumer<Signal> sink, Clock clock) {
    this.sink = sink;
    this.clock = clock;
  }

  void send(Signal signal) {
    try {
      sink.accept(signal);
    } catch (Throwable e) {
      report(e);
    }
  }

  void send(List<Signal> signals) {
    signals.forEach(this::send);
  }

  void link(LinkState state, String words) {
    send(new Signal.LinkChanged(state, words, clock.instant()));
  }

  /** Hands on what nobody expected, without ending this thread. */
  static void report(Throwable unexpected) {
    Thread here = Thread.currentThread();
    here.getUncaughtExceptionHandler().uncaughtException(here, unexpected);
  }
}
