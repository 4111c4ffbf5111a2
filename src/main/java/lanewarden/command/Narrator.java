package lanewarden.command;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import lanewarden.station.LineView;
import lanewarden.station.Station;

/**
 * Tells everything that happens at a station, in order.
 *
 * <p>A terminal may be slow and the station must not wait for it: one thread of its own tells.
 * Whatever is told was signed and durable before.
 */
final class Narrator {
  private final Consumer<Notice> ear;
  private final Function<LineView, List<Notice>> first;
  private final BiFunction<LineView, LineView, List<Notice>> next;
  private final Thread thread = new Thread(this::tell, "lanewarden narrator");

  // Under this object's lock
  private final Deque<LineView> views = new ArrayDeque<>();
  private boolean telling;
  private boolean ended;

  private Narrator(
      Consumer<Notice> ear,
      Function<LineView, List<Notice>> first,
      BiFunction<LineView, LineView, List<Notice>> next) {
    this.ear = ear;
    this.first = first;
    this.next = next;
    thread.setDaemon(true);
  }

  /** Tells of the line; begins with how it stands now. */
  static Narrator of(Station station, Consumer<Notice> ear) {
    return of(station, ear, Narration::of, Narration::between);
  }

  /**
   * Begins with how the station stands now.
   *
   * @param first tells of the first view
   * @param next tells what changed from a view to the next
   */
  static Narrator of(
      Station station,
      Consumer<Notice> ear,
      Function<LineView, List<Notice>> first,
      BiFunction<LineView, LineView, List<Notice>> next) {
    Narrator narrator = new Narrator(ear, first, next);
    station.listen(narrator::see);
    narrator.thread.start();
    return narrator;
  }

  /** Waits until everything that happened so far is told. */
  synchronized void settle() throws InterruptedException {
    while (!views.isEmpty() || telling) {
      wait();
    }
  }

  /** Tells the rest, then ends. */
  void end() throws InterruptedException {
    settle();
    synchronized (this) {
      ended = true;
      notifyAll();
    }
  }

  private synchronized void see(LineView view) {
    if (!ended) {
      views.add(view);
      notifyAll();
    }
  }

  private void tell() {
    try {
      Optional<LineView> now = view();
      LineView before = null;
      while (now.isPresent()) {
        List<Notice> told = before == null ? first.apply(now.get()) : next.apply(before, now.get());
        told.forEach(ear);
        before = now.get();
        now = view();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      // Also after a failure: whoever waits must not wait for ever
      stop();
    }
  }

  /** The next view to tell of; empty at the end. */
  private synchronized Optional<LineView> view() throws InterruptedException {
    telling = false;
    notifyAll();
    while (views.isEmpty() && !ended) {
      wait();
    }
    telling = !views.isEmpty();
    return Optional.ofNullable(views.poll());
  }

  private synchronized void stop() {
    ended = true;
    telling = false;
    views.clear();
    notifyAll();
  }
}
