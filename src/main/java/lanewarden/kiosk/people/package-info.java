/** The officials: who may sign, and the passphrases of their keys. */
@NullMarked
package lanewarden.kiosk.people;

import org.jspecify.annotations.NullMarked;
