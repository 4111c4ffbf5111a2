/** The official takes over: who, and the passphrase. */
@NullMarked
package lanewarden.kiosk.signin;

import org.jspecify.annotations.NullMarked;
