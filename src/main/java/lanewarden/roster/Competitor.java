package lanewarden.roster;

import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
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
 * @param certifiedDrawWeight as a certificate of the bow states it, or null where the roster does
 *     not say
 * @param drawLength as declared, or null where the roster does not say
 * @param braceHeight as declared, or null where the roster does not say
 */
public record Competitor(
    String bib,
    String name,
    String division,
    @Nullable Mass arrowMass,
    @Nullable Force drawWeight,
    @Nullable Force certifiedDrawWeight,
    @Nullable Length drawLength,
    @Nullable Length braceHeight) {

  /** Someone whose bow has no certificate and no lengths that the roster states. */
  public Competitor(
      String bib,
      String name,
      String division,
      @Nullable Mass arrowMass,
      @Nullable Force drawWeight) {
    this(bib, name, division, arrowMass, drawWeight, null, null, null);
  }
}
