/**
 * The rule book: event, divisions, limits, shots and decision; reading it, saying what is wrong
 * with it, and judging a list of shots.
 *
 * <p>Front door: {@link lanewarden.rules.RuleBook} to read one, {@link
 * lanewarden.rules.SpeedRule#judge} for a verdict. All arithmetic is on exact decimals, and the
 * unit a limit is written in governs. Words it owns: division, limit, tolerance, counted reading,
 * void, decision, verdict. May import: quantity, written, metrology, bow.
 */
@NullMarked
package lanewarden.rules;

import org.jspecify.annotations.NullMarked;
