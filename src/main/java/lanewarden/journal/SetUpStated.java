package lanewarden.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Quantity;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * Bow and arrow as they are now; takes the place of all that was stated before.
 *
 * @param arrowMass or null if it is not known
 * @param drawWeight as the bow is set, or null if it is not known
 * @param certifiedDrawWeight as its certificate states it, or null if there is none
 * @param drawLength of the archer with this bow, or null if it is not known
 * @param braceHeight of the bow, or null if it is not known
 * @param weighed which of the figures were weighed or measured for this entry, by their names in
 *     {@link SetUp}: the others stand as they were stated before; null in older ledgers
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SetUpStated(
    long check,
    @Nullable Mass arrowMass,
    @Nullable Force drawWeight,
    @Nullable Force certifiedDrawWeight,
    @Nullable Length drawLength,
    @Nullable Length braceHeight,
    @Nullable List<String> weighed)
    implements Fact.Weighed {

  /** As older versions signed it. */
  public SetUpStated(
      long check,
      @Nullable Mass arrowMass,
      @Nullable Force drawWeight,
      @Nullable Force certifiedDrawWeight,
      @Nullable Length drawLength,
      @Nullable Length braceHeight) {
    this(check, arrowMass, drawWeight, certifiedDrawWeight, drawLength, braceHeight, null);
  }

  /** The same of a bow whose lengths were not measured. */
  public SetUpStated(
      long check,
      @Nullable Mass arrowMass,
      @Nullable Force drawWeight,
      @Nullable Force certifiedDrawWeight) {
    this(check, arrowMass, drawWeight, certifiedDrawWeight, null, null);
  }

  /** Copies the list. */
  public SetUpStated {
    weighed = weighed == null ? null : List.copyOf(weighed);
  }

  /** Bow and arrow as they are now. */
  public SetUp setUp() {
    return new SetUp(arrowMass, drawWeight, certifiedDrawWeight, drawLength, braceHeight);
  }

  /**
   * The names of the figures that were weighed or measured. Of an older entry, which does not say,
   * those that it changed: they were typed. One that it left as declared may have been weighed, but
   * nothing shows it.
   *
   * @param before what was known when it was stated
   */
  Set<String> weighed(SetUp before) {
    Set<String> names = new LinkedHashSet<>();
    if (weighed != null) {
      names.addAll(weighed);
      return names;
    }
    note(names, SetUp.ARROW_MASS, before.arrowMass(), arrowMass);
    note(names, SetUp.DRAW_WEIGHT, before.drawWeight(), drawWeight);
    note(names, SetUp.CERTIFIED_DRAW_WEIGHT, before.certifiedDrawWeight(), certifiedDrawWeight);
    note(names, SetUp.DRAW_LENGTH, before.drawLength(), drawLength);
    note(names, SetUp.BRACE_HEIGHT, before.braceHeight(), braceHeight);
    return names;
  }

  private static <Q extends Quantity<?, Q>> void note(
      Set<String> names, String name, @Nullable Q before, @Nullable Q now) {
    if (now != null && (before == null || now.compareTo(before) != 0)) {
      names.add(name);
    }
  }
}
