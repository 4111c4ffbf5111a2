package lanewarden.bench;

import lanewarden.quantity.Sentence;

/** The sentences that tell what is wrong in a practice file. */
public enum PracticeTold implements Sentence.Form {
  SHOT("a shot"),
  WRITE_HEADER("write the header, then a line for each shot"),
  ADD_LINES("add a line for each shot"),
  BOW_NAME("a name for the bow"),
  ARROW_NAME("a name for the arrow"),
  REMARK("a remark"),
  SET_UPS("at most {0} set-ups of a bow and an arrow in one file"),
  ONE_MORE("one more"),
  FEWER("compare fewer at a time: put the others into a file of their own"),
  MISREAD("yes for a misread, no for a reading that counts however odd it is, or nothing"),
  YES_OR_NO("write yes or no, or leave it empty to have it tested"),
  MASS_NEEDED("an arrow whose mass stands on one of its lines"),
  WEIGH("weigh the arrow and write its arrow-mass"),
  RATED("a rated speed with the conditions it was measured under"),
  WRITE_CONDITIONS("write {0} as the bow's maker states them, or leave out"),
  SAME_FOR_BOW("the same {0} for bow \"{1}\" on every line"),
  SAME_FOR_ARROW("the same {0} for arrow \"{1}\" on every line"),
  TWO_FIGURES("\"{0}\", and \"{1}\" on line {2}"),
  WRITE_ON_BOTH("write the right figure on both, or give the other one a name of its own");

  private final String english;

  PracticeTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
