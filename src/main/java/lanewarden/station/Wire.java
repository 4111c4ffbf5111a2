package lanewarden.station;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import lanewarden.chronograph.ProfileTrial;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Signal;

/**
 * What came from the station's own instrument since it was opened, so that it can be looked at
 * without opening its port a second time.
 *
 * <p>Has a lock of its own: looking at the wire never keeps the line waiting for it.
 */
final class Wire {

  /** How many of the last signals are kept. */
  static final int KEPT = 200;

  private final ProfileTrial trial;
  private final Deque<Overheard> newestFirst = new ArrayDeque<>();
  private long refused;

  Wire(SentenceProfile profile) {
    trial = new ProfileTrial(profile);
  }

  /** Takes what came. */
  void hear(Signal signal) {
    trial.take(signal);
    Overheard heard = Overheard.of(signal);
    synchronized (newestFirst) {
      newestFirst.addFirst(heard);
      if (newestFirst.size() > KEPT) {
        newestFirst.removeLast();
      }
      if (heard.kind() == Overheard.Kind.REFUSED) {
        refused++;
      }
    }
  }

  /** The wire at this moment. */
  WireView view(String instrument) {
    List<Overheard> heard = new ArrayList<>();
    long refusals;
    synchronized (newestFirst) {
      heard.addAll(newestFirst);
      refusals = refused;
    }
    return new WireView(
        instrument, heard, trial.readings(), refusals, Listening.Misfit.foundBy(trial));
  }
}
