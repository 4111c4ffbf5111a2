package lanewarden.rules;

import lanewarden.quantity.Energy;
import lanewarden.quantity.Sentence;

/**
 * The kinetic energy clause of a division.
 *
 * @param limit more than zero
 * @param side whether an energy equal to it keeps it
 */
public record EnergyLimit(Energy limit, Side side) {

  /**
   * @throws IllegalArgumentException if nobody could keep it
   */
  public EnergyLimit {
    if (limit.value().signum() <= 0) {
      throw new IllegalArgumentException("a limit of " + limit + " lets nobody pass");
    }
  }

  /** For example {@code limit: below 165 J}. */
  Sentence inWords() {
    return Sentence.of(side == Side.BELOW ? Because.LIMIT_BELOW : Because.LIMIT, limit);
  }
}
