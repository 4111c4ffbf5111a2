package lanewarden.kiosk.sound;

import java.util.Optional;
import lanewarden.journal.Outcome;
import lanewarden.station.LineView;
import org.jspecify.annotations.Nullable;

/**
 * Decides which sound is made of what changed at the line: one at most, and of several the one that
 * matters most. For one thread.
 */
public final class Listener {
  private @Nullable Moment before;

  /** The line as it is now, and the sound to make of it; none of the first, which is no news. */
  public Optional<Cue> hear(LineView view) {
    return hear(Moment.of(view));
  }

  Optional<Cue> hear(Moment now) {
    Moment was = before;
    before = now;
    return was == null ? Optional.empty() : cue(was, now);
  }

  private static Optional<Cue> cue(Moment was, Moment now) {
    boolean same = was.check() == now.check();
    if (now.outcome().isPresent() && !(same && was.outcome().equals(now.outcome()))) {
      return now.outcome().map(outcome -> outcome == Outcome.WITHIN ? Cue.WITHIN : Cue.OVER);
    }
    if (now.refused().isPresent() && !now.refused().equals(was.refused())) {
      return Optional.of(Cue.REFUSED);
    }
    boolean taken = now.readings() > (same ? was.readings() : 0);
    return taken || now.verifying() > was.verifying() ? Optional.of(Cue.READING) : Optional.empty();
  }
}
