/** The organizer writes the rules, and sees at every key what they do. */
@NullMarked
package lanewarden.kiosk.rulebook;

import org.jspecify.annotations.NullMarked;
