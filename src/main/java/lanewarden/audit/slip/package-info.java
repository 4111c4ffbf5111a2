/**
 * One check on a small sheet with a square code, and the way back from the code to the ledger.
 *
 * <p>Front doors: {@link lanewarden.audit.slip.Slips} and {@link lanewarden.audit.slip.SlipSearch}.
 * Words it owns: slip, square code. May import: rules, bench, ledger, journal; of the sub-rooms
 * findings, wording and press.
 */
@NullMarked
package lanewarden.audit.slip;

import org.jspecify.annotations.NullMarked;
