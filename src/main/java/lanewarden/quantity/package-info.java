/**
 * Values with units: speed, mass, force, length, energy, momentum and percent, as exact decimals
 * that remember the unit they were written in; the power stroke, which is made of two lengths; and
 * sentences that keep their figures beside their words.
 *
 * <p>Front door: {@link lanewarden.quantity.Speed}. Words it owns: quantity, unit, value as
 * written, power stroke, sentence, form. May import: nothing but the JDK.
 */
@NullMarked
package lanewarden.quantity;

import org.jspecify.annotations.NullMarked;
