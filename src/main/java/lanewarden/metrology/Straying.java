package lanewarden.metrology;

import lanewarden.quantity.Sentence;

/** The sentence that tells how far a stray reading lies from the others. */
public enum Straying implements Sentence.Form {
  FROM_MEDIAN("{0} is {1} % from the median of {2}");

  private final String english;

  Straying(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
