package lanewarden.station;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongSupplier;
import lanewarden.journal.FrameFact;

/**
 * Holds the computer's clock against its monotonic clock, which nobody can set, from one entry to
 * the next; under the station's lock.
 *
 * <p>A step is more than two seconds: a crystal is off by well under a second in a morning, and a
 * time service that nudges the clock does so by at most 0.5 ms a second, 1.8 s in an hour (both
 * from memory). So what is told was a jump: somebody or a time service set the clock, or the
 * computer slept, during which the monotonic clock of most systems stands still.
 */
final class ClockWatch {
  /** What is less is no step. */
  static final Duration LEAST = Duration.ofSeconds(2);

  private static final int DECIMALS = 3;

  private final Clock clock;
  private final LongSupplier nanos;
  private Instant wall;
  private long mono;
  private Instant seenWall;
  private long seenMono;

  ClockWatch(Clock clock, LongSupplier nanos) {
    this.clock = clock;
    this.nanos = nanos;
    this.wall = clock.instant();
    this.mono = nanos.getAsLong();
    this.seenWall = wall;
    this.seenMono = mono;
  }

  /** The step since what was written last, if there was one. */
  Optional<FrameFact.ClockStepped> look() {
    seenWall = clock.instant();
    seenMono = nanos.getAsLong();
    Instant expected = wall.plusNanos(seenMono - mono);
    Duration by = Duration.between(expected, seenWall);
    return by.abs().compareTo(LEAST) > 0
        ? Optional.of(
            new FrameFact.ClockStepped(
                BigDecimal.valueOf(by.toMillis(), DECIMALS),
                Instant.ofEpochMilli(expected.toEpochMilli())))
        : Optional.empty();
  }

  /** What was looked at is in the ledger; a step that could not be written is found again. */
  void written() {
    wall = seenWall;
    mono = seenMono;
  }

  /** What the official is told of a step. */
  static Trouble trouble(FrameFact.ClockStepped step) {
    boolean back = step.by().signum() < 0;
    return new Trouble(
        "The computer's clock jumped "
            + (back ? "back" : "forward")
            + " by "
            + step.by().abs().toPlainString()
            + " s.",
        "Somebody or a time service set it, or the computer slept. The ledger says so from here on;"
            + " readings and verdicts rest on the order of the entries, not on the clock.",
        "Look whether the clock is right now, and let nobody set it until the line is closed.",
        "CLOCK-STEPPED",
        Trouble.Kind.ENVIRONMENT);
  }
}
