package lanewarden.rules;

import lanewarden.quantity.Sentence;

/** The sentences that tell how likely a rule ends in what, and the parts they are made of. */
public enum Odds implements Sentence.Form {
  RISKS(
      "An archer whose arrows fly at exactly {0} on average is failed {1}; one {2} faster passes {3}."),
  SELDOM("less than once in 1000 times"),
  NEARLY_ALWAYS("practically always"),
  OFTEN("{0} times in 100");

  private final String english;

  Odds(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
