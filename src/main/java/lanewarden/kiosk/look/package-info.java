/** How everything looks: texts, themes, typeface, signs and figures. Shows nothing by itself. */
@NullMarked
package lanewarden.kiosk.look;

import org.jspecify.annotations.NullMarked;
