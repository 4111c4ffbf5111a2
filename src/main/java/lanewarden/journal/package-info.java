/**
 * What can be written in the ledger, as a sealed family of facts; their JSON form; and the standing
 * folded from them.
 *
 * <p>Front door: {@link lanewarden.journal.Standing}. Words it owns: fact, standing, check,
 * attempt, obstacle, place, verification, occasion, hold, stop, protest, recheck, ruling,
 * correction, docket, objection. May import: quantity, written, rules, ledger, roster.
 */
@NullMarked
package lanewarden.journal;

import org.jspecify.annotations.NullMarked;
