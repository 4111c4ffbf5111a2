/** Whether a day can begin with the station, point by point, and the bundle for support. */
@NullMarked
package lanewarden.kiosk.checkup;

import org.jspecify.annotations.NullMarked;
