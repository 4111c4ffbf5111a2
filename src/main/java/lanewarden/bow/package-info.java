/**
 * The physics of bow and arrow: kinetic energy and momentum, the most a bow can give, what it
 * stores, how its speed follows arrow mass and draw weight, and how an arrow slows in air.
 *
 * <p>Front door: {@link lanewarden.bow.Arrow}; {@link lanewarden.bow.BowLimit} for a reading that
 * cannot be; {@link lanewarden.bow.MeasuredBow} for what some weighed arrows say of others, {@link
 * lanewarden.bow.DrawScaling} for another draw weight; {@link lanewarden.bow.DrawCurve}, {@link
 * lanewarden.bow.DrawShape} and {@link lanewarden.bow.Launch} for the energy. Words it owns: arrow
 * mass, kinetic energy, momentum, stored energy, efficiency, virtual mass, drag. May import:
 * quantity, metrology.
 */
@NullMarked
package lanewarden.bow;

import org.jspecify.annotations.NullMarked;
