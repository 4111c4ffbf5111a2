package lanewarden.station;

/**
 * A division of which a share is to be drawn, and was not yet under the rule book in force.
 *
 * @param division its code
 * @param share as the rule book writes it, for example {@code 20 %}
 * @param pool how many of it are on the roster
 */
public record DueDraw(String division, String share, int pool) {}
