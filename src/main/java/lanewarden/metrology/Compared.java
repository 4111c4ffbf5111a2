package lanewarden.metrology;

import lanewarden.quantity.Sentence;

/** The sentences that tell a comparison with a reference, and the parts they are made of. */
public enum Compared implements Sentence.Form {
  ONE_SHOT("1 shot: {0}, {1}, farthest shot {2} by {3}"),
  SHOTS("{0} shots: {1}, {2}, farthest shot {3} by {4}"),
  BIAS_AT_MOST("bias {0} (at most {1})"),
  BIAS_MORE("bias {0} (more than {1})"),
  SPREAD_AT_MOST("spread {0} (at most {1})"),
  SPREAD_MORE("spread {0} (more than {1})"),
  NO_SPREAD("no spread from one shot: shoot again");

  private final String english;

  Compared(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
