package lanewarden.metrology;

import lanewarden.quantity.Sentence;

/** The sentences that tell what a decision rule leaves to chance. */
public enum Guarding implements Sentence.Form {
  SIMPLE(
      "Simple acceptance: the reading decides as it is. Of readings exactly at the limit, {0} come from arrows that are over it."),
  ACCEPTANCE(
      "Guarded acceptance: a reading passes if it is below the limit by {0} standard uncertainties. Of those passed exactly at the edge, at most {1} are over."),
  REJECTION(
      "Guarded rejection: a reading fails only if it is above the limit by {0} standard uncertainties. Of those failed exactly at the edge, at most {1} are within.");

  private final String english;

  Guarding(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
