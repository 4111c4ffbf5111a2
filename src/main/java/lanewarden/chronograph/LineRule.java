package lanewarden.chronograph;

import java.time.Duration;

/**
 * How the bytes of an instrument fall into lines.
 *
 * @param terminator the bytes that end a line
 * @param longest the most bytes before the terminator
 * @param silence half a line followed by this long without a byte is torn
 * @param quiet how long the port must be seen quiet after opening before its first line is known to
 *     begin with its first byte
 */
record LineRule(RawBytes terminator, int longest, Duration silence, Duration quiet) {}
