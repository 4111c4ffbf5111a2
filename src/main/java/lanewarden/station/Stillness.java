package lanewarden.station;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.function.LongSupplier;

/**
 * How long nothing has happened; under the station's lock.
 *
 * <p>By the longer of two clocks: the monotonic one stands still while a lid is closed, and the
 * other can be set back.
 */
final class Stillness {
  private final Clock clock;
  private final LongSupplier nanos;
  private Instant wall;
  private long mono;

  Stillness(Clock clock, LongSupplier nanos) {
    this.clock = clock;
    this.nanos = nanos;
    this.wall = clock.instant();
    this.mono = nanos.getAsLong();
  }

  /** Something happens now. */
  void end() {
    wall = clock.instant();
    mono = nanos.getAsLong();
  }

  Duration length() {
    Duration byWall = Duration.between(wall, clock.instant());
    Duration byMono = Duration.ofNanos(nanos.getAsLong() - mono);
    return byWall.compareTo(byMono) > 0 ? byWall : byMono;
  }
}
