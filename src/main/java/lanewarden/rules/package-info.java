/**
 * The rule book: event, divisions, limits, shots and decision; reading it, saying what is wrong
 * with it, and judging a list of shots.
 *
 * <p>Front door: {@link lanewarden.rules.RuleBook}. Words it owns: division, limit, tolerance,
 * decision, verdict. May import: quantity, written, metrology, bow.
 */
@NullMarked
package lanewarden.rules;

import org.jspecify.annotations.NullMarked;
