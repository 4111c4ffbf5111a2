/** The start of the program: what to open, and an event to be made. */
@NullMarked
package lanewarden.kiosk.start;

import org.jspecify.annotations.NullMarked;
