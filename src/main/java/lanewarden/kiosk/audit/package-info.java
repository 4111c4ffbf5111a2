/**
 * The records of an event: reports made, ledgers verified, exported and brought in, slips found.
 */
@NullMarked
package lanewarden.kiosk.audit;

import org.jspecify.annotations.NullMarked;
