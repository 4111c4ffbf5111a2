package lanewarden.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A stop of the line for safety, as folded from the ledger.
 *
 * @param number the sequence of the entry that stopped it
 * @param at when it was stopped
 * @param signer thumbprint of the official's key that stopped it
 * @param reason why, as far as it was said
 * @param cleared how it ended, if it did
 */
public record LineStop(
    long number, Instant at, String signer, Optional<String> reason, Optional<Cleared> cleared) {

  /**
   * The end with its entry.
   *
   * @param sequence of the entry that ended it
   * @param signer thumbprint of the official's key that ended it
   */
  public record Cleared(long sequence, Instant at, String signer) {}

  /** Whether the line is not clear yet. */
  public boolean stands() {
    return cleared.isEmpty();
  }

  /** How long it lasted by the station's clock; empty while it stands. */
  public Optional<Duration> lasted() {
    return cleared.map(end -> Duration.between(at, end.at()));
  }

  LineStop said(Optional<String> why) {
    return new LineStop(number, at, signer, why.or(() -> reason), cleared);
  }

  LineStop clear(Cleared end) {
    return new LineStop(number, at, signer, reason, Optional.of(end));
  }
}
