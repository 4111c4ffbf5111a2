/**
 * The use cases of the check-in line: make an event, open, sign in, call, take a reading, void,
 * re-check, verify the instrument, hold and lift, dispute and correct, close.
 *
 * <p>Front door: {@link lanewarden.station.Station}. Words it owns: event folder, station, line,
 * settings, budget, trouble. May import: every room above it.
 */
@NullMarked
package lanewarden.station;

import org.jspecify.annotations.NullMarked;
