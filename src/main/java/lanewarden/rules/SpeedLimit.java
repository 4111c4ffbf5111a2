package lanewarden.rules;

import java.util.Optional;
import lanewarden.bow.GrainsPerPound;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * The speed clause of a division: the limit and what is allowed above it.
 *
 * @param limit more than zero; its unit governs
 * @param side whether a speed equal to what is allowed keeps the limit
 * @param tolerance kept apart from the limit; a speed in it has the limit's unit
 * @param rounding of limit plus tolerance
 * @param guard between that and what passes
 * @param onlyBelow the limit applies only to an arrow lighter than this; always where empty
 */
public record SpeedLimit(
    Speed limit,
    Side side,
    Tolerance tolerance,
    Rounding rounding,
    Guard guard,
    Optional<GrainsPerPound> onlyBelow) {

  /**
   * @throws IllegalArgumentException if the parts contradict each other
   */
  public SpeedLimit {
    if (limit.value().signum() <= 0) {
      throw new IllegalArgumentException("a limit of " + limit + " lets nobody pass");
    }
    tolerance
        .speed()
        .filter(speed -> speed.unit() != limit.unit())
        .ifPresent(
            speed -> {
              throw new IllegalArgumentException(
                  "the tolerance " + speed + " is in another unit than the limit " + limit);
            });
    rounding
        .step()
        .filter(step -> step.unit() != limit.unit())
        .ifPresent(
            step -> {
              throw new IllegalArgumentException(
                  "the rounding to " + step + " is in another unit than the limit " + limit);
            });
    if (rounding.of(tolerance.above(limit)).value().signum() == 0) {
      throw new IllegalArgumentException("the limit rounds down to nothing");
    }
  }

  /** Limit plus tolerance, rounded as the rule says, in the governing unit; exact. */
  Speed rounded() {
    return rounding.of(tolerance.above(limit));
  }

  /** The fastest speed that passes: limit plus tolerance, rounded, with its guard band; exact. */
  public Speed allowed() {
    return guard.of(rounded(), limit);
  }

  /**
   * The risk that the guard band leaves, in words; empty where there is none.
   *
   * @param standard uncertainty of a reading, m/s
   */
  public Optional<Sentence> risk(double standard) {
    return guard.risk(limit, standard);
  }

  /** For example {@code limit 280 ft/s plus 3 % = 288.4 ft/s, rounded down to 288 ft/s}. */
  Sentence inWords() {
    Sentence sum = tolerance.inWords(limit);
    if (!(tolerance instanceof Tolerance.None)) {
      sum = Sentence.of(Because.COMES_TO, sum, Wording.plain(tolerance.above(limit)));
    }
    Sentence words = Sentence.of(side == Side.BELOW ? Because.LIMIT_BELOW : Because.LIMIT, sum);
    return guard.after(rounding.after(words, rounded()), Wording.plain(allowed()));
  }
}
