/** Sounds: which to make of what happens at the line, how they sound, and how they are played. */
@NullMarked
package lanewarden.kiosk.sound;

import org.jspecify.annotations.NullMarked;
