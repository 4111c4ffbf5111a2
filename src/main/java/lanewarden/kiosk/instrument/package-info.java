/** An official looks at the instrument: its control charts, and what comes over its wire. */
@NullMarked
package lanewarden.kiosk.instrument;

import org.jspecify.annotations.NullMarked;
