package lanewarden.station;

import lanewarden.quantity.Sentence;

/** The sentences that tell how far a verification of the instrument came, where no shot tells. */
public enum Verified implements Sentence.Form {
  NO_SHOT("no shot yet"),
  BROKEN_OFF("broken off after {0} of {1} shots"),
  /** How it ended, and why an official ended it. */
  BECAUSE("{0}: {1}");

  private final String english;

  Verified(String english) {
    this.english = english;
  }

  /** Of a verification that an official ended. */
  static Sentence brokenOff(int taken, int agreed) {
    return Sentence.of(BROKEN_OFF, taken, agreed);
  }

  @Override
  public String english() {
    return english;
  }
}
