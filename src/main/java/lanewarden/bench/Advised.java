package lanewarden.bench;

import lanewarden.quantity.Sentence;

/** The sentences that tell what would bring a set-up inside, and the parts they are made of. */
public enum Advised implements Sentence.Form {
  ONE_WAY("To come within: {0}."),
  EITHER_WAY("To come within: {0}, or {1}."),
  NO_WAY("Neither a heavier arrow nor a lower draw weight brings this set-up inside."),

  // A heavier arrow, with its mass; and whether one too heavy may be over the energy limit
  HEAVIER("an arrow {0} to {1} gr heavier ({2} to {3} gr)"),
  HEAVIER_UP_TO("an arrow up to {0} gr heavier ({1} gr)"),
  HEAVIER_BUT("an arrow {0} to {1} gr heavier ({2} to {3} gr; {4})"),
  HEAVIER_UP_TO_BUT("an arrow up to {0} gr heavier ({1} gr; {2})"),
  TOO_HEAVY("one of more than {0} may be over the energy limit"),
  FREE("an arrow of {0} or more, to which no speed limit applies at this draw weight"),
  FREE_BUT("an arrow of {0} or more, to which no speed limit applies at this draw weight ({1})"),
  FREE_FROM("From {0} on, no speed limit applies to an arrow at this draw weight."),
  AGAINST_ENERGY(
      "A heavier arrow does not help against a limit of energy: it takes more of it along. A lighter one is harder on the bow."),
  TOO_MUCH_ENERGY(
      "An arrow heavy enough for the speed limit is over the energy limit, or too near to it: it takes more of the bow's energy along."),

  // A lower draw weight
  LOWER("{0} to {1} {2} less draw weight"),
  LOWER_UP_TO("up to {0} {1} less draw weight"),
  LOWER_SHARE("{0} to {1} % less draw weight"),
  LOWER_SHARE_UP_TO("up to {0} % less draw weight"),
  LOW_AND_FREE("a draw weight of {0} or less, at which no speed limit applies to this arrow"),
  TOO_LOW("A draw weight so low would not be admitted: {0}."),

  // What it holds for
  LEAVE_ROOM(
      "The greater change brings {0} within 95 times in 100, the smaller one perhaps; leave room."),
  SUPPOSED(
      "Supposed by rules of thumb: a virtual mass of {0} to {1}, as of compound bows, and an energy that follows the draw weight with a power of {2} to {3}."),
  SUPPOSED_SCATTER(
      "Supposed by rules of thumb: arrows that scatter by {0}, a virtual mass of {1} to {2}, as of compound bows, and an energy that follows the draw weight with a power of {3} to {4}.");

  private final String english;

  Advised(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
