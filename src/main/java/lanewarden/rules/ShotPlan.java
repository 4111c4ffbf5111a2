package lanewarden.rules;

import lanewarden.quantity.Sentence;

/**
 * How many shots a check has.
 *
 * @param counted readings that count, one or more
 * @param allowed shots that may be taken, void ones included; not fewer than counted
 * @param voids void readings that are forgiven: one more ends the check undecided
 */
public record ShotPlan(int counted, int allowed, int voids) {

  /**
   * @throws IllegalArgumentException if the numbers contradict each other
   */
  public ShotPlan {
    if (counted < 1 || allowed < counted || voids < 0) {
      throw new IllegalArgumentException(
          "no check can have "
              + counted
              + " counted readings, "
              + allowed
              + " shots and "
              + voids
              + " voids forgiven");
    }
  }

  /** In a sentence for the official's screen. */
  public Sentence inWords() {
    Sentence forgiven =
        switch (voids) {
          case 0 -> Sentence.of(Demand.NO_VOID);
          case 1 -> Sentence.of(Demand.ONE_VOID);
          default -> Sentence.of(Demand.VOIDS, voids);
        };
    return allowed == 1
        ? Sentence.of(Demand.ONE_SHOT, forgiven)
        : Sentence.of(Demand.SHOTS, allowed, forgiven);
  }
}
