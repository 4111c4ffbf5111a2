package lanewarden.station;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.function.LongSupplier;

/**
 * What a program brings to a station from outside: time, randomness and its own name.
 *
 * @param clock gives the time of day written into readings and entries
 * @param nanos monotonic nanoseconds, as {@link System#nanoTime}
 * @param random for keys and seals
 * @param program name and version of the running program
 */
public record Surroundings(Clock clock, LongSupplier nanos, SecureRandom random, String program) {}
