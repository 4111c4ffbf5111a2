package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The stops of the line for safety; at most one stands.
 *
 * <p>Owned by the standing's thread.
 */
final class LineStops {
  private final List<LineStop> all = new ArrayList<>();

  /** Takes a fact if it is about a stop. */
  boolean fold(long sequence, Instant at, String signer, Fact fact) {
    if (fact instanceof FrameFact.LineStopped stopped) {
      stop(new LineStop(sequence, at, signer, Optional.empty(), Optional.empty()), stopped);
    } else if (fact instanceof FrameFact.LineCleared cleared) {
      clear(cleared, new LineStop.Cleared(sequence, at, signer));
    } else {
      return false;
    }
    return true;
  }

  private void stop(LineStop fresh, FrameFact.LineStopped fact) {
    LineStop stop = standing().orElse(fresh);
    all.remove(stop);
    all.add(stop.said(Optional.ofNullable(fact.reason())));
  }

  private void clear(FrameFact.LineCleared fact, LineStop.Cleared end) {
    LineStop stop =
        standing()
            .filter(one -> one.number() == fact.stop())
            .orElseThrow(
                () ->
                    new IllegalArgumentException("no stop " + fact.stop() + " of the line stands"));
    all.set(all.size() - 1, stop.clear(end));
  }

  Optional<LineStop> standing() {
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(all.get(all.size() - 1)).filter(LineStop::stands);
  }

  List<LineStop> all() {
    return List.copyOf(all);
  }
}
