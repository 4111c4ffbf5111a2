/**
 * Competitors and their divisions, read from CSV.
 *
 * <p>Front door: {@link lanewarden.roster.Roster}. Words it owns: roster, competitor, bib. May
 * import: quantity, written.
 */
@NullMarked
package lanewarden.roster;

import org.jspecify.annotations.NullMarked;
