package lanewarden.chronograph;

import java.time.Instant;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * One speed that an instrument measured, with everything needed to doubt it later.
 *
 * @param speed the value in the unit it was written in
 * @param raw the whole line as received, terminator included
 * @param source where the bytes came from
 * @param instrument the instrument's name
 * @param at when the line was complete
 * @param sequence the instrument's own number of the line, or null if its lines have none
 * @param companion what a second instrument in series measured of the same arrow, or null if there
 *     is none
 */
public record Reading(
    Speed speed,
    RawBytes raw,
    Source source,
    String instrument,
    Instant at,
    @Nullable String sequence,
    @Nullable Companion companion) {
  /** A reading of one instrument alone. */
  public Reading(
      Speed speed,
      RawBytes raw,
      Source source,
      String instrument,
      Instant at,
      @Nullable String sequence) {
    this(speed, raw, source, instrument, at, sequence, null);
  }

  /** This reading, confirmed by a second instrument. */
  Reading with(Companion second) {
    return new Reading(speed, raw, source, instrument, at, sequence, second);
  }
}
