/**
 * The program's entry and the hand-written wiring that joins the rooms.
 *
 * <p>Front door: {@link lanewarden.Main}. May import: every room.
 */
@NullMarked
package lanewarden;

import org.jspecify.annotations.NullMarked;
