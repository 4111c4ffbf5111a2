package lanewarden.rules;

import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an archer's bow and arrow when the rule is asked.
 *
 * @param arrowMass of the whole arrow, or null where nobody stated it
 * @param drawWeight as the bow is set, or null where nobody stated it
 * @param certifiedDrawWeight as a certificate states it, or null where there is none
 */
public record SetUp(
    @Nullable Mass arrowMass, @Nullable Force drawWeight, @Nullable Force certifiedDrawWeight) {

  /** How every sentence names the first figure. */
  public static final String ARROW_MASS = "arrow mass";

  /** How every sentence names the second figure. */
  public static final String DRAW_WEIGHT = "draw weight as set";

  /** How every sentence names the third figure. */
  public static final String CERTIFIED_DRAW_WEIGHT = "certified draw weight";

  /** Nothing is known. */
  public static SetUp unknown() {
    return new SetUp(null, null, null);
  }
}
