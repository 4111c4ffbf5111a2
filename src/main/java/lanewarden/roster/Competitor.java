package lanewarden.roster;

import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Someone who may be called to the check, as the roster states it.
 *
 * @param bib unique in the roster
 * @param name as written
 * @param division the code of a division in the rule book
 * @param arrowMass as declared, or null where the roster does not say
 * @param drawWeight as declared, or null where the roster does not say
 */
public record Competitor(
    String bib,
    String name,
    String division,
    @Nullable Mass arrowMass,
    @Nullable Force drawWeight) {}
