package lanewarden.chronograph;

import java.time.Clock;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A capture played back as if its bytes came over a wire now.
 *
 * <p>The bytes are decoded with the capture's own timing whatever the pace, so a replay at any pace
 * gives the same readings and refusals. After the last chunk the link is {@link LinkState#CLOSED}
 * by itself.
 */
public final class ReplayInstrument implements Instrument {
  private final Capture capture;
  private final SentenceProfile profile;
  private final String name;
  private final Clock clock;
  private final double pace;
  private final Worker worker;

  /**
   * @param capture what to play
   * @param profile how the instrument speaks
   * @param clock gives the time of readings
   * @param pace 1 waits as long as the capture did, 0.5 half as long, 0 not at all
   * @throws IllegalArgumentException if the pace is negative or not finite
   */
  public ReplayInstrument(Capture capture, SentenceProfile profile, Clock clock, double pace) {
    if (!Double.isFinite(pace) || pace < 0) {
      throw new IllegalArgumentException("the pace is 0 or more, not " + pace);
    }
    this.capture = capture;
    this.profile = profile;
    this.name = profile.name() + ", replayed";
    this.clock = clock;
    this.pace = pace;
    this.worker = new Worker(name);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Source source() {
    return Source.REPLAY;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    Outlet outlet = new Outlet(sink, clock);
    worker.start(() -> play(outlet));
  }

  @Override
  public void close() {
    worker.end();
  }

  private void play(Outlet outlet) {
    Decoder decoder = new Decoder(profile, Source.REPLAY, name, clock);
    long wire = 0;
    decoder.opened(wire);
    outlet.link(LinkState.UP, name + ": " + capture.chunks().size() + " chunks to play.");
    for (Capture.Chunk chunk : capture.chunks()) {
      long wait = TimeUnit.MILLISECONDS.toNanos(chunk.afterMillis());
      if (worker.endedWithin((long) (wait * pace))) {
        break;
      }
      wire += wait;
      // The wire was silent up to now: what that means for an unfinished line comes first
      outlet.send(decoder.idle(wire));
      outlet.send(decoder.feed(chunk.bytes(), wire));
    }
    outlet.send(decoder.lost(wire));
    outlet.link(LinkState.CLOSED, name + ": the end.");
  }
}
