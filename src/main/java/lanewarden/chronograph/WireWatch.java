package lanewarden.chronograph;

import java.util.List;
import java.util.Optional;

/**
 * Notices that an open port brings noise or a flood, which no single line shows.
 *
 * <p>Each is told once, until a reading was heard (noise) or a second brought little enough
 * (flood). It is over once a reading was heard since, and for {@link #QUIET} neither noise nor a
 * flood. Times are monotonic nanoseconds. For one thread.
 */
final class WireWatch {
  /** So many bytes without a reading are enough to judge by. */
  private static final int ENOUGH = 40;

  private static final long SECOND = 1_000_000_000L;

  /** How long the wire must have been in order after a trouble, nanoseconds. */
  static final long QUIET = 5 * SECOND;

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
  private boolean troubled;
  private boolean readingSince;
  private long unrestAt;

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
    troubled = false;
  }

  /** What came and what it became; the trouble it shows, if it was not told yet. */
  Optional<PortTrouble> came(RawBytes chunk, List<Signal> became, long nanos) {
    Optional<PortTrouble> flood = flood(chunk.length(), nanos);
    boolean reading = became.stream().anyMatch(Signal.Heard.class::isInstance);
    Optional<PortTrouble> trouble = reading ? flood : noise(chunk).or(() -> flood);
    if (reading) {
      bytes = 0;
      strange = 0;
      noiseTold = false;
    }
    if (trouble.isPresent()) {
      troubled = true;
      readingSince = false;
    }
    readingSince |= reading;
    if (chunk.length() > 0 && (strange(chunk) > 0 || inSecond > most)) {
      unrestAt = nanos;
    }
    return trouble;
  }

  /** Whether a trouble that was told is over; says so once. */
  boolean isOver(long nanos) {
    boolean over = troubled && readingSince && nanos - unrestAt >= QUIET;
    troubled &= !over;
    return over;
  }

  private Optional<PortTrouble> noise(RawBytes chunk) {
    bytes += chunk.length();
    strange += strange(chunk);
    if (!noiseTold && bytes >= ENOUGH && strange * 2 > bytes) {
      noiseTold = true;
      return Optional.of(PortTrouble.noise(settings));
    }
    return Optional.empty();
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
