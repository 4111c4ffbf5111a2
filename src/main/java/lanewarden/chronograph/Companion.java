package lanewarden.chronograph;

import lanewarden.quantity.Speed;

/**
 * What a second instrument in series measured of the same arrow; it confirms, and is never mixed
 * into the reading.
 *
 * @param speed the value in the unit it was written in
 * @param raw the whole line as received, terminator included
 * @param instrument the second instrument's name
 */
public record Companion(Speed speed, RawBytes raw, String instrument) {}
