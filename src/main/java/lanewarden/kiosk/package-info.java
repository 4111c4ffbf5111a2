/**
 * The screens: one sub-room per task of a person, each a view and a view-model.
 *
 * <p>Front door: {@link lanewarden.kiosk.Kiosk}. Words it owns: screen, view, view-model, theme.
 * May import: station, audit and value types.
 */
@NullMarked
package lanewarden.kiosk;

import org.jspecify.annotations.NullMarked;
