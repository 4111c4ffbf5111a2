package lanewarden.chronograph;

import java.time.Clock;
import java.util.function.Consumer;

/** A capture played back. */
@SuppressWarnings("DoNotCallSuggester")
public final class ReplayInstrument implements Instrument {
  private final SentenceProfile profile;

  /** Plays the capture; pace 1 is its own timing, 0 as fast as possible. */
  public ReplayInstrument(Capture capture, SentenceProfile profile, Clock clock, double pace) {
    this.profile = profile;
  }

  @Override
  public String name() {
    return profile.name() + ", replayed";
  }

  @Override
  public Source source() {
    return Source.REPLAY;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {}
}
