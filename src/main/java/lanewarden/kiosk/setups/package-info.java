/** The archer's side: what awaits a set-up in each division. */
@NullMarked
package lanewarden.kiosk.setups;

import org.jspecify.annotations.NullMarked;
