package lanewarden.rules;

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
  public String inWords() {
    String shots = allowed == 1 ? "1 shot. " : "Up to " + allowed + " shots, void ones included. ";
    return switch (voids) {
      case 0 -> shots + "No void reading is forgiven.";
      case 1 -> shots + "1 void reading is forgiven.";
      default -> shots + voids + " void readings are forgiven.";
    };
  }
}
