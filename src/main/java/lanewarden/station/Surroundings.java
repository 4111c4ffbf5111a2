package lanewarden.station;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.function.LongSupplier;

/**
 * What a program brings to a station from outside: time, randomness, its own name and its log.
 *
 * @param clock gives the time of day written into readings and entries
 * @param nanos monotonic nanoseconds, as {@link System#nanoTime}
 * @param random for keys and seals
 * @param program name and version of the running program
 * @param log where it is noted when events open and close
 */
public record Surroundings(
    Clock clock, LongSupplier nanos, SecureRandom random, String program, ProgramLog log) {

  /** Nothing is noted anywhere. */
  public Surroundings(Clock clock, LongSupplier nanos, SecureRandom random, String program) {
    this(clock, nanos, random, program, ProgramLog.none());
  }

  /** The same with a log. */
  public Surroundings with(ProgramLog other) {
    return new Surroundings(clock, nanos, random, program, other);
  }
}
