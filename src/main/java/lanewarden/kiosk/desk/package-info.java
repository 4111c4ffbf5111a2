/**
 * The way from the screens to the station and back: work off the screen's thread, answers on it.
 */
@NullMarked
package lanewarden.kiosk.desk;

import org.jspecify.annotations.NullMarked;
