package lanewarden.audit.findings;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Entry;

/**
 * When somebody was on duty at the line, by the times of the entries.
 *
 * <p>Owned by one thread.
 */
final class Attendance {
  /** A signature takes a moment, and so does a sign-in until it counts. */
  private static final Duration MOMENT = Duration.ofSeconds(2);

  private final List<Turn> turns = new ArrayList<>();
  private Optional<Instant> since = Optional.empty();
  private Instant last = Instant.MIN;
  private BigDecimal seconds = BigDecimal.ZERO;

  private record Turn(Instant from, Instant until) {}

  /** Takes an entry in its order. */
  void examine(Entry entry, Fact fact) {
    boolean began = entry.monotonicSeconds().compareTo(seconds) < 0;
    seconds = entry.monotonicSeconds();
    if (began) {
      end(last);
    }
    last = entry.at();
    if (fact instanceof Fact.OfficialSignedIn) {
      end(last);
      since = Optional.of(last);
    } else if (fact instanceof FrameFact.OfficialSignedOut || fact instanceof Fact.StationClosed) {
      end(last);
    }
  }

  private void end(Instant until) {
    since.ifPresent(from -> turns.add(new Turn(from, until)));
    since = Optional.empty();
  }

  /** Whether somebody was on duty then, beyond doubt. */
  boolean was(Instant at) {
    return turns.stream().anyMatch(turn -> isWithin(at, turn.from(), turn.until()))
        || since.filter(from -> isWithin(at, from, Instant.MAX)).isPresent();
  }

  private static boolean isWithin(Instant at, Instant from, Instant until) {
    return from.plus(MOMENT).isBefore(at)
        && at.isBefore(until.equals(Instant.MAX) ? until : until.minus(MOMENT));
  }
}
