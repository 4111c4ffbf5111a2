package lanewarden.rules;

import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an archer's bow and arrow when the rule is asked.
 *
 * @param arrowMass of the whole arrow, or null where nobody stated it
 * @param drawWeight as the bow is set, or null where nobody stated it
 * @param certifiedDrawWeight as a certificate states it, or null where there is none
 * @param drawLength of the archer with this bow, to the back of the bow, or null where nobody
 *     stated it
 * @param braceHeight from the string at rest to the deepest part of the grip, or null where nobody
 *     stated it
 */
public record SetUp(
    @Nullable Mass arrowMass,
    @Nullable Force drawWeight,
    @Nullable Force certifiedDrawWeight,
    @Nullable Length drawLength,
    @Nullable Length braceHeight) {

  /** How every sentence names the first figure. */
  public static final String ARROW_MASS = "arrow mass";

  /** How every sentence names the second figure. */
  public static final String DRAW_WEIGHT = "draw weight as set";

  /** How every sentence names the third figure. */
  public static final String CERTIFIED_DRAW_WEIGHT = "certified draw weight";

  /** How every sentence names the fourth figure. */
  public static final String DRAW_LENGTH = "draw length";

  /** How every sentence names the fifth figure. */
  public static final String BRACE_HEIGHT = "brace height";

  /** A bow whose lengths nobody stated. */
  public SetUp(
      @Nullable Mass arrowMass, @Nullable Force drawWeight, @Nullable Force certifiedDrawWeight) {
    this(arrowMass, drawWeight, certifiedDrawWeight, null, null);
  }

  /** Nothing is known. */
  public static SetUp unknown() {
    return new SetUp(null, null, null);
  }
}
