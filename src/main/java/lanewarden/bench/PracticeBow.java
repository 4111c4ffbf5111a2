package lanewarden.bench;

import java.util.Optional;
import lanewarden.bow.BowLimit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;

/**
 * A bow of a practice day.
 *
 * @param label its owner's name for it
 * @param drawWeight as set
 * @param drawLength of the archer with it: pivot-point draw plus 1¾ in
 * @param braceHeight from the grip's pivot point to the string at rest
 * @param rating what its maker says of its speed
 */
public record PracticeBow(
    String label,
    Optional<Force> drawWeight,
    Optional<Length> drawLength,
    Optional<Length> braceHeight,
    Optional<Rating> rating) {

  /** The most it can give, if all its figures are stated. */
  Optional<BowLimit> limit() {
    return drawWeight.flatMap(
        weight ->
            drawLength.flatMap(
                draw -> braceHeight.map(brace -> new BowLimit(weight, draw, brace))));
  }
}
