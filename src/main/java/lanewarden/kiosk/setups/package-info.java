/** The archer's side: what awaits a set-up in each division, and set-ups beside each other. */
@NullMarked
package lanewarden.kiosk.setups;

import org.jspecify.annotations.NullMarked;
