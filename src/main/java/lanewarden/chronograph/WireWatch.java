package lanewarden.chronograph;

import java.util.List;
import java.util.Optional;

/**
 * Notices that an open port brings noise or a flood, which no single line shows.
 *
 * <p>Each is told once, until a reading was heard (noise) or a second brought little enough
 * (flood). Times are monotonic nanoseconds. For one thread.
 */
final class WireWatch {
  /** So many bytes without a reading are enough to judge by. */
  private static final int ENOUGH = 40;

  private static final long SECOND = 1_000_000_000L;

  /** Nobody shoots so many arrows in a second. */
  private static final int SHOTS = 10;

  private final PortSettings settings;
  private final long most;
  private long bytes;
  private long strange;
  private boolean noiseTold;
  private long secondBegan;
  private long inSecond;
  private boolean floodTold;

  WireWatch(SentenceProfile profile) {
    this.settings = profile.port();
    this.most = (long) SHOTS * (profile.line().longest() + profile.line().terminator().length());
  }

  /** The port was opened anew. */
  void opened(long nanos) {
    bytes = 0;
    strange = 0;
    noiseTold = false;
    secondBegan = nanos;
    inSecond = 0;
    floodTold = false;
  }

  /** What came and what it became; the trouble it shows, if it was not told yet. */
  Optional<PortTrouble> came(RawBytes chunk, List<Signal> became, long nanos) {
    Optional<PortTrouble> flood = flood(chunk.length(), nanos);
    if (became.stream().anyMatch(Signal.Heard.class::isInstance)) {
      bytes = 0;
      strange = 0;
      noiseTold = false;
      return flood;
    }
    bytes += chunk.length();
    strange += strange(chunk);
    if (!noiseTold && bytes >= ENOUGH && strange * 2 > bytes) {
      noiseTold = true;
      return Optional.of(PortTrouble.noise(settings));
    }
    return flood;
  }

  private Optional<PortTrouble> flood(int count, long nanos) {
    if (nanos - secondBegan >= SECOND) {
      floodTold &= inSecond > most;
      secondBegan = nanos;
      inSecond = 0;
    }
    inSecond += count;
    if (floodTold || inSecond <= most) {
      return Optional.empty();
    }
    floodTold = true;
    return Optional.of(PortTrouble.flood(inSecond));
  }

  /** How many of the bytes no text has: neither printable ASCII nor a line's end nor a tab. */
  static long strange(RawBytes bytes) {
    return bytes
        .characters()
        .chars()
        .filter(c -> (c < ' ' || c > '~') && c != '\r' && c != '\n' && c != '\t')
        .count();
  }
}
