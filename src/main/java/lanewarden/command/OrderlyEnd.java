package lanewarden.command;

import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import lanewarden.station.Trouble;

/**
 * What must be done when a command ends, also when the program is told to end (by Ctrl-C or by the
 * system) in the middle of it. Done once.
 */
final class OrderlyEnd {

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

  /** Does the work, and then, however it went, what must be done last. */
  <T> T after(Callable<T> work) throws Exception {
    T result;
    try {
      result = work.call();
    } catch (Exception e) {
      try {
        finish();
      } catch (Exception second) {
        e.addSuppressed(second);
      }
      throw e;
    }
    finish();
    return result;
  }

  private void finish() throws Exception {
    // If the program is told to end at this moment, the other thread does it
    if (done.compareAndSet(false, true)) {
      try {
        last.run();
      } finally {
        forget();
      }
    }
  }

  private void forget() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The program is told to end just now; its thread will find everything done
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
