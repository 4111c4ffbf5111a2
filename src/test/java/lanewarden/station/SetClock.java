package lanewarden.station;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until it is set, and the seconds beside it that nobody can set. */
public final class SetClock extends Clock {
  private Instant now = Instant.parse("2026-05-30T07:30:00Z");
  private long nanos = 17;

  /** Time passes by both clocks. */
  public void pass(Duration time) {
    now = now.plus(time);
    nanos += time.toNanos();
  }

  /** The clock alone is set, forward or back. */
  public void set(Duration by) {
    now = now.plus(by);
  }

  /** Nanoseconds that nobody can set. */
  public long nanos() {
    return nanos;
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("one zone only");
  }
}
