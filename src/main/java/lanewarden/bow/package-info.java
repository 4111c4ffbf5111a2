/**
 * The physics of bow and arrow: kinetic energy and momentum, the most a bow can give, and how an
 * arrow slows in air.
 *
 * <p>Front door: {@link lanewarden.bow.Arrow}; {@link lanewarden.bow.BowLimit} for a reading that
 * cannot be. Words it owns: arrow mass, kinetic energy, momentum, drag. May import: quantity,
 * metrology.
 */
@NullMarked
package lanewarden.bow;

import org.jspecify.annotations.NullMarked;
