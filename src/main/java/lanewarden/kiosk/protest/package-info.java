/**
 * Protests and rechecks: the docket, a check with all its readings, rulings, corrections, slips.
 */
@NullMarked
package lanewarden.kiosk.protest;

import org.jspecify.annotations.NullMarked;
