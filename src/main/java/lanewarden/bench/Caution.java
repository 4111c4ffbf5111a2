package lanewarden.bench;

import java.util.List;

/**
 * What is said beside everything that may make somebody change a bow or an arrow; common practice
 * of the trade. The event's rules, the law of the place and its range officers stand above it.
 */
public enum Caution {
  /** A light arrow is as hard on a bow as none. */
  LEAST_ARROW(
      "Never go below the least arrow mass per draw weight of the bow's maker or the event."),
  /** A bow has a range, and a maker who states it. */
  MAKERS_LIMITS("Adjust a bow only within its maker's limits."),
  /** Limbs and cams are under load even at rest. */
  COMPETENT_PERSON("Have a competent person do the work on it."),
  /** What was computed was not measured. */
  CHECK_AGAIN("Have it checked again afterwards: this was computed, not measured."),
  /** What the string does not give the arrow, it gives the bow. */
  NO_DRY_FIRE("Never let go the string without an arrow.");

  private final String sentence;

  Caution(String sentence) {
    this.sentence = sentence;
  }

  /** For the archer, on screen and paper. */
  public String inWords() {
    return sentence;
  }

  /** All of them, a sentence each: none is ever left out. */
  public static List<String> sentences() {
    return List.of(values()).stream().map(Caution::inWords).toList();
  }

  /** All of them in one paragraph. */
  public static String paragraph() {
    return String.join(" ", sentences());
  }
}
