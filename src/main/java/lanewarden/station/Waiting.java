package lanewarden.station;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import lanewarden.chronograph.Signal;
import org.jspecify.annotations.Nullable;

/**
 * Signals that were received and are not written yet, in the order received.
 *
 * <p>Usually empty: a signal is written as it comes. It fills while nobody can sign, or while the
 * disk refuses; then nothing is dropped and nothing overtakes.
 */
final class Waiting {

  private record Heard(Signal signal, boolean onDuty) {}

  private final Deque<Heard> queue = new ArrayDeque<>();
  private @Nullable Trouble trouble;

  /** Writes one signal. */
  @FunctionalInterface
  interface Writer {
    void write(Signal signal) throws StationException;
  }

  void add(Signal signal, boolean onDuty) {
    queue.add(new Heard(signal, onDuty));
  }

  /** Writes what waits, up to the first that cannot be written. */
  void write(Writer onDuty, Writer offDuty) {
    try {
      while (!queue.isEmpty()) {
        Heard first = queue.element();
        (first.onDuty() ? onDuty : offDuty).write(first.signal());
        queue.remove();
      }
      trouble = null;
    } catch (StationException e) {
      trouble = e.trouble();
    } catch (RuntimeException e) {
      // Our own fault: it must be seen, and must not take the instrument's thread with it.
      trouble = Trouble.of(e);
    }
  }

  /** Why the first that waits could not be written, if that was tried. */
  Optional<Trouble> trouble() {
    return Optional.ofNullable(trouble);
  }

  int size() {
    return queue.size();
  }
}
