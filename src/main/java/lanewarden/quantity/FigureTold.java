package lanewarden.quantity;

/** The sentences that tell what is wrong with a number and its unit, beside {@link Slip}. */
public enum FigureTold implements Sentence.Form {
  /** A right one as an example. */
  SPEED("a speed such as \"{0}\""),
  MASS("a mass such as \"{0}\""),
  FORCE("a force such as \"{0}\""),
  LENGTH("a length such as \"{0}\""),
  ENERGY("an energy such as \"{0}\""),
  MOMENTUM("a momentum such as \"{0}\""),
  PERCENTAGE("a percentage such as \"{0}\""),
  PER_POUND("an arrow mass per draw weight such as \"{0}\""),
  NOT_NEGATIVE("a value that is not negative"),
  PERCENTAGE_NOT_NEGATIVE("a percentage that is not negative"),
  PER_POUND_MORE("an arrow mass per draw weight of more than zero"),
  DIGITS_THEN_UNIT("write digits with a decimal point, then the unit"),
  THEN_PERCENT("write a number, then the percent sign"),
  THEN_PER_POUND("write a number, then gr/lb"),
  GRAINS_FOR_EACH("write how many grains of arrow there must be for each pound of draw weight"),
  ADD_UNIT("add the unit, one of {0}"),
  USE_UNIT("use one of {0}"),
  WRITE("write \"{0}\""),
  STROKE("a power stroke: a brace height of less than the draw length less {0}"),
  A_LENGTH("a length"),
  WHOLE_ARROW("the mass of a whole arrow"),
  ARROW("the mass of an arrow"),
  DRAW_LENGTH("a draw length"),
  EXCHANGED("measure both, and look whether the two were exchanged"),
  /** A brace height and a draw length that leave no power stroke. */
  STROKE_FIGURES("\"{0}\" with a draw length of {1}");

  private final String english;

  FigureTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
