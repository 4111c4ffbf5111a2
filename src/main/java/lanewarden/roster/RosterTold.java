package lanewarden.roster;

import lanewarden.quantity.Sentence;

/** The sentences that tell what is wrong in a list of competitors. */
public enum RosterTold implements Sentence.Form {
  COMPETITOR("a competitor"),
  WRITE_HEADER("write the header, then a line for each competitor"),
  ADD_LINES("add a line for each competitor"),
  NAME("a name"),
  DIVISION_CODE("a division code"),
  BIB("a bib of 1 to 12 letters, digits or hyphens"),
  AS_SHOWN("write it as the bib and its barcode show it"),
  BIB_OF_ITS_OWN("a bib that nobody else has"),
  BIB_AGAIN("\"{0}\", already on line {1}"),
  OWN_BIB("give each competitor their own bib, and one line only"),
  DIVISION("a division of the rule book, one of {0}"),
  CORRECT("correct it here, or add the division to the rule book");

  private final String english;

  RosterTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
