package lanewarden.station;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import lanewarden.ledger.SigningKey;
import org.jspecify.annotations.Nullable;

/**
 * What was received and is not written yet, in the order received: signals, and a stop of the line.
 *
 * <p>Usually empty: a signal is written as it comes. It fills while nobody can sign, or while the
 * disk refuses; then nothing is dropped and nothing overtakes.
 */
final class Waiting {

  private record Received(Writing writing, boolean stops, boolean tells) {}

  private final Deque<Received> queue = new ArrayDeque<>();
  private @Nullable Trouble trouble;

  /** Writes one thing that was received. */
  @FunctionalInterface
  interface Writing {
    void by(SigningKey signer) throws StationException;
  }

  /**
   * @param tells whether anything is lost with it: word of the link alone is not, it comes anew
   */
  void add(Writing signal, boolean tells) {
    queue.add(new Received(signal, false, tells));
  }

  /** A stop of the line waits too: nothing that comes after it is written before it. */
  void addStop(Writing stop) {
    queue.add(new Received(stop, true, true));
  }

  /** Writes what waits, up to the first that cannot be written. */
  void write(SigningKey signer) {
    try {
      while (!queue.isEmpty()) {
        queue.element().writing().by(signer);
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

  /** Whether a stop of the line is among it. */
  boolean stops() {
    return queue.stream().anyMatch(Received::stops);
  }

  /** How much would be lost with the program. */
  int losable() {
    return (int) queue.stream().filter(Received::tells).count();
  }

  int size() {
    return queue.size();
  }
}
