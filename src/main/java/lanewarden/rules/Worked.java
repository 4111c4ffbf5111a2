package lanewarden.rules;

import lanewarden.quantity.Sentence;

/** The sentences that tell a case worked out from a rule, and the parts they are made of. */
public enum Worked implements Sentence.Form {

  // What they show
  INSIDE("inside"),
  EDGE("at the edge"),
  OUTSIDE("outside"),
  FURTHER_OUTSIDE("further outside"),
  OUTSIDE_HEAVY("outside, heavy arrow"),
  HEAVY_ARROW("heavy arrow"),
  LIGHTEST_ARROW("lightest arrow admitted"),
  ARROW_TOO_LIGHT("arrow too light"),
  BOW_TOO_WEAK("bow too weak"),
  BOW_TOO_STRONG("bow too strong"),

  // What is given
  ARROW("arrow {0}"),
  DRAW_WEIGHT("draw weight {0}"),
  CERTIFIED("certified {0}"),
  READINGS("readings {0}"),

  // What comes of it
  ADMITTED("admitted, and measured like any other"),
  WITHIN("within, {0}"),
  OVER("over, {0}"),
  OVER_IN_BAND("over, {0}; over by up to {1}: {2}"),
  NOT_DECIDED("not decided, {0}"),
  NOT_ADMITTED("not admitted, {0}"),
  /** What it shows, what is given, what comes of it. */
  CASE("{0} ({1}): {2}");

  private final String english;

  Worked(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
