package lanewarden.command;

import java.util.concurrent.atomic.AtomicBoolean;
import lanewarden.station.Trouble;

/**
 * What must be done when a command ends, also when the program is told to end (by Ctrl-C or by the
 * system) in the middle of it. Done once.
 */
final class OrderlyEnd implements AutoCloseable {

  /** What is to be done. */
  @FunctionalInterface
  interface Last {
    void run() throws Exception;
  }

  private final Last last;
  private final Terminal terminal;
  private final AtomicBoolean done = new AtomicBoolean();
  private final Thread hook = new Thread(this::toldToEnd, "lanewarden end");

  OrderlyEnd(Last last, Terminal terminal) {
    this.last = last;
    this.terminal = terminal;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  @Override
  public void close() throws Exception {
    if (!done.compareAndSet(false, true)) {
      // The program is told to end and the other thread does it
      return;
    }
    try {
      last.run();
    } finally {
      forget();
    }
  }

  private void forget() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // Told to end just now: the hook finds everything done
      done.set(true);
    }
  }

  private void toldToEnd() {
    if (done.compareAndSet(false, true)) {
      try {
        last.run();
      } catch (Exception e) {
        terminal.say(Trouble.of(e).toString());
      }
    }
  }
}
