/** What went wrong, in one shape: what happened, why, what to do, code. */
@NullMarked
package lanewarden.kiosk.trouble;

import org.jspecify.annotations.NullMarked;
