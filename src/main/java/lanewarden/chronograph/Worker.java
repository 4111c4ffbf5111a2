package lanewarden.chronograph;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/** The one thread of an instrument: started once, asked to end, and waited for. */
final class Worker {
  private static final long PATIENCE_MILLIS = 2_000;
  private static final long LOOK_MILLIS = 10;

  private final String name;
  private final AtomicReference<Thread> thread = new AtomicReference<>();
  private final CountDownLatch ending = new CountDownLatch(1);

  Worker(String name) {
    this.name = name;
  }

  /**
   * Starts the thread.
   *
   * @throws IllegalStateException if it was started before, or ended
   */
  void start(Runnable work) {
    Thread fresh = new Thread(work, "lanewarden " + name);
    // The link must not keep a program alive whose window is closed
    fresh.setDaemon(true);
    if (ended() || !thread.compareAndSet(null, fresh)) {
      throw new IllegalStateException(name + " was started before");
    }
    fresh.start();
  }

  /** Whether the thread was asked to end. */
  boolean ended() {
    return ending.getCount() == 0;
  }

  /** Waits on the worker's thread; returns early, with true, when it is asked to end. */
  boolean endedWithin(long nanos) {
    try {
      return ending.await(nanos, TimeUnit.NANOSECONDS);
    } catch (InterruptedException e) {
      ending.countDown();
      Thread.currentThread().interrupt();
      return true;
    }
  }

  /** Waits on any other thread until the worker reached something, or was asked to end. */
  void await(CountDownLatch reached) throws InterruptedException {
    boolean taken = false;
    while (!taken && !ended()) {
      // Looks up now and then, because a worker that was asked to end never gets there
      taken = reached.await(LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }
  }

  /** Asks the thread to end, and does not wait for it. */
  void askToEnd() {
    ending.countDown();
  }

  /** Asks the thread to end and waits for it, but not for ever, and not from that thread itself. */
  void end() {
    askToEnd();
    Thread running = thread.get();
    if (running == null || running == Thread.currentThread()) {
      return;
    }
    try {
      running.join(PATIENCE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
