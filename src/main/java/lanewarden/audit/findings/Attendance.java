package lanewarden.audit.findings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Entry;

/**
 * When somebody was on duty at the line, by the times of the entries; and whether what came while
 * nobody was may still be written: a station does that right after the sign-in, before anything
 * else.
 *
 * <p>Owned by one thread.
 */
final class Attendance {
  /** A signature takes a moment, and so does a sign-in until it counts. */
  private static final Duration MOMENT = Duration.ofSeconds(2);

  private final ClockExaminer clock;
  private final List<Turn> turns = new ArrayList<>();
  private Optional<Instant> since = Optional.empty();
  private boolean catchesUp;
  private Instant last = Instant.MIN;
  private long program;

  private record Turn(Instant from, Instant until) {}

  /**
   * @param clock has looked at each entry before this does
   */
  Attendance(ClockExaminer clock) {
    this.clock = clock;
  }

  /** Takes an entry in its order. */
  void examine(Entry entry, Fact fact) {
    if (program != clock.opening()) {
      program = clock.opening();
      end(last);
    }
    last = entry.at();
    catchesUp = fact instanceof Fact.OfficialSignedIn || (catchesUp && isOfArrival(fact));
    if (fact instanceof Fact.OfficialSignedIn) {
      end(last);
      since = Optional.of(last);
    } else if (fact instanceof FrameFact.OfficialSignedOut || fact instanceof Fact.StationClosed) {
      end(last);
    }
  }

  /** What a station signs when somebody comes, and what had waited for that. */
  private static boolean isOfArrival(Fact fact) {
    return fact instanceof Fact.StationOpened
        || fact instanceof Fact.VerificationPlanned
        || fact instanceof Fact.RosterAdopted
        || fact instanceof FrameFact.ClockStepped
        || fact instanceof Fact.LinkChanged
        || fact instanceof Fact.LineRefused;
  }

  /** Whether the entry at hand may be of what came before somebody was on duty. */
  boolean catchesUp() {
    return catchesUp;
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
