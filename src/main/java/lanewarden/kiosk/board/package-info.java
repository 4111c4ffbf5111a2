/** What the archer sees: one reading, one limit, one word. */
@NullMarked
package lanewarden.kiosk.board;

import org.jspecify.annotations.NullMarked;
