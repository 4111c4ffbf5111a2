package lanewarden.audit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Goes on by two seconds whenever it is asked. */
final class StepClock extends Clock {
  private Instant now;
  private Duration passed = Duration.ZERO;

  StepClock(Instant start) {
    this.now = start;
  }

  /** Somebody sets it. */
  void set(Instant to) {
    now = to;
  }

  /** Nanoseconds that go with the clock, whatever it is set to. */
  long nanos() {
    return passed.toNanos();
  }

  @Override
  public Instant instant() {
    Duration tick = Duration.ofSeconds(2);
    now = now.plus(tick);
    passed = passed.plus(tick);
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
