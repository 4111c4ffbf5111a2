/**
 * What a set of readings says and how well: mean, spread and their doubt.
 *
 * <p>Front door: {@link lanewarden.metrology.Spread}. Words it owns: mean, standard deviation,
 * spread. May import: quantity.
 */
@NullMarked
package lanewarden.metrology;

import org.jspecify.annotations.NullMarked;
