/** The check-in line: call, rule in words, shots, reading, outcome, next. */
@NullMarked
package lanewarden.kiosk.line;

import org.jspecify.annotations.NullMarked;
