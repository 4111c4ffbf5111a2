package lanewarden.rules;

import lanewarden.quantity.Sentence;

/** The sentences in which a rule says what it demands, and the parts they are made of. */
public enum Demand implements Sentence.Form {
  AT_MOST("At most {0}"),
  BELOW("Below {0}");

  private final String english;

  Demand(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
