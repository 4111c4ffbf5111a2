package lanewarden.journal;

import lanewarden.quantity.Sentence;

/** What follows an outcome, where the consequence by itself does not say it. */
public enum Sequel implements Sentence.Form {
  /** Who is not admitted was not over a limit. */
  ANOTHER_SET_UP("the archer may come back with another bow or arrow"),
  /** The number of the protest. */
  RULING("a judge's ruling on protest {0}"),
  /** After a hold. */
  IN_QUESTION("a re-check that uses none up, since the instrument is in doubt"),
  /** Although the rule has re-checks. */
  NONE_LEFT("no re-check is left: a judge rules"),
  /** The last one. */
  ONE_LEFT("a re-check: 1 is left"),
  /** How many. */
  SOME_LEFT("a re-check: {0} are left");

  private final String english;

  Sequel(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
