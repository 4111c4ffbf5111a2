/**
 * The physics of an arrow in flight: kinetic energy and momentum.
 *
 * <p>Front door: {@link lanewarden.bow.Arrow}. Words it owns: arrow mass, kinetic energy, momentum.
 * May import: quantity, metrology.
 */
@NullMarked
package lanewarden.bow;

import org.jspecify.annotations.NullMarked;
