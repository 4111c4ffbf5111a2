/**
 * The rule book: event, divisions, everything a division demands of bow, arrow and shot; reading
 * it, saying what is wrong with it, judging a check, and saying in words what the rule means.
 *
 * <p>Front door: {@link lanewarden.rules.RuleBook} to read one, {@link lanewarden.rules.Rule#judge}
 * for a verdict. All arithmetic is on exact decimals, and the unit a limit is written in governs.
 * Words it owns: division, limit, tolerance, counted reading, void, decision, verdict, set-up,
 * condition, band, consequence, phase, lapse, coverage. May import: quantity, written, metrology,
 * bow.
 */
@NullMarked
package lanewarden.rules;

import org.jspecify.annotations.NullMarked;
