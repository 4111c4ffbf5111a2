package lanewarden.chronograph;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Knows a line that was already taken when it comes again.
 *
 * <p>Two ways: the instrument's own sequence number, and, for instruments that have none, the least
 * time between two arrows. Only readings count here, so a line that was refused may be sent again.
 * For one thread.
 */
final class RepeatGuard {
  private final Duration apart;
  private @Nullable String lastSequence;
  private @Nullable RawBytes lastRaw;
  private long lastAt;
  private boolean reopened;

  /**
   * @param apart the least time between two readings; zero if the sequence number suffices
   */
  RepeatGuard(Duration apart) {
    this.apart = apart;
  }

  /**
   * The link was opened anew: the instrument may have been switched off and count from its first
   * number again, so until the next reading only the very same line is a repeat.
   */
  void reopened() {
    reopened = true;
  }

  /** Why the line is a repeat; empty if it is new, and then it is remembered. */
  Optional<String> check(RawBytes raw, @Nullable String sequence, long nanos) {
    if (lastRaw != null) {
      boolean counterMayHaveRestarted = reopened && !raw.equals(lastRaw);
      if (sequence != null && sequence.equals(lastSequence) && !counterMayHaveRestarted) {
        return Optional.of(
            "Number " + sequence + " was taken already: the line came twice and counts once.");
      }
      if (nanos - lastAt < apart.toNanos()) {
        return Optional.of(
            "It came less than "
                + apart.toMillis()
                + " ms after the last reading, too soon to be another arrow: it counts once.");
      }
    }
    lastSequence = sequence;
    lastRaw = raw;
    lastAt = nanos;
    reopened = false;
    return Optional.empty();
  }
}
