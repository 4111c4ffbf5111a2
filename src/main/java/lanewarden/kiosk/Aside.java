package lanewarden.kiosk;

import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import lanewarden.station.StationException;

/**
 * Work at the station that is done aside, while something else is.
 *
 * @param <T> what comes of it
 */
final class Aside<T> {

  /** The work. */
  @FunctionalInterface
  interface Work<T> {
    T run() throws StationException;
  }

  private final FutureTask<T> task;

  private Aside(FutureTask<T> task) {
    this.task = task;
  }

  /** Begins it on a thread of its own. */
  static <T> Aside<T> begin(Work<T> work) {
    FutureTask<T> task = new FutureTask<>(work::run);
    Thread thread = new Thread(task, "kiosk-opening");
    thread.setDaemon(true);
    thread.start();
    return new Aside<>(task);
  }

  /**
   * Waits for what comes of it.
   *
   * @throws StationException if it failed so
   */
  T result() throws StationException {
    try {
      return task.get();
    } catch (ExecutionException e) {
      throw thrown(Objects.requireNonNull(e.getCause()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted while the station was opened");
    }
  }

  private static StationException thrown(Throwable cause) {
    if (cause instanceof RuntimeException bug) {
      throw bug;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    return (StationException) cause;
  }
}
