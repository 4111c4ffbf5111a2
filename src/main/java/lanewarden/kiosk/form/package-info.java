/** A form: questions that somebody answers before something is signed. */
@NullMarked
package lanewarden.kiosk.form;

import org.jspecify.annotations.NullMarked;
