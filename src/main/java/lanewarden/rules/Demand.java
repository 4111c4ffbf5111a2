package lanewarden.rules;

import lanewarden.quantity.Sentence;

/** The sentences in which a rule says what it demands, and the parts they are made of. */
public enum Demand implements Sentence.Form {

  // The limit
  AT_MOST("At most {0}"),
  BELOW("Below {0}"),
  /** A limit that applies to every arrow. */
  ALWAYS("{0}."),
  /** A limit, below which arrow per draw weight it applies, and which draw weight counts. */
  TO_LIGHT_ARROWS(
      "{0}, for an arrow of less than {1} ({2}); an arrow of {1} or more has no speed limit."),
  NO_LIMIT("No speed limit."),
  NOTHING("No speed limit, and nothing is asked of bow or arrow."),
  ENERGY_AT_MOST("Kinetic energy at most {0}."),
  ENERGY_BELOW("Kinetic energy below {0}."),

  // Bow and arrow
  LEAST_ARROW("An arrow of less than {0} is not admitted ({1})."),
  LEAST_DRAW("A bow of less than {0} is not admitted ({1})."),
  MOST_DRAW("A bow of more than {0} is not admitted ({1})."),

  // How readings decide
  ONE_READING("One reading decides."),
  MEAN("The mean of {0} readings decides."),
  HIGHEST("The highest of {0} readings decides."),
  HIGHEST_AT_ONCE("The highest of {0} readings decides; one over fails at once."),
  HIGHEST_BANDED(
      "The highest of {0} readings decides; one over fails as soon as its band is certain."),
  MEDIAN("The median of {0} readings decides."),
  MEDIAN_OF_EVEN("The median of {0} readings decides (the mean of the middle two)."),
  WITHIN_COUNT("At least {0} of {1} readings must be within."),
  FIRST_WITHIN("The first reading within passes; {0} readings over fail."),
  ONE_WITHIN("One of {0} readings within is enough; {0} readings over fail."),
  HOW_FAR_OVER("How far over is told by {0}."),
  EACH_FIRST("Each reading is first {0}."),
  SPREAD(
      "Nothing is decided before all {0} are in; readings more than {1} apart end the check undecided at once."),

  // Shots
  ONE_SHOT("1 shot. {0}"),
  SHOTS("Up to {0} shots, void ones included. {1}"),
  NO_VOID("No void reading is forgiven."),
  ONE_VOID("1 void reading is forgiven."),
  VOIDS("{0} void readings are forgiven."),

  // Readings that are not believed
  JUMP(
      "A reading more than {0} from the one before it counts only when the official has let it count."),
  OUTLIER(
      "A reading that stood out from the others after any of the shots, by {0}, counts only when the official has let it count."),
  UNASKED_FIRST(
      "No reading comes before the first: if it is {0}, it decides at once, and nobody is asked about it."),
  UNASKED_TWO(
      "The test takes {0} readings: if one of the first two is {1}, it decides at once, and nobody is asked about it."),
  WITHIN("within"),
  OVER("over"),
  OVER_FOR_CERTAIN("over and its band certain"),
  UNSCREENED_ONE(
      "No clause asks about a reading that seems odd: a misread counts like any other, unless it is more than the bow can give by its stated figures. A single reading can be held against nothing else: state arrow mass, draw weight, draw length and brace height, or count 2 readings or more and write {0}."),
  UNSCREENED_FEW(
      "No clause asks about a reading that seems odd: a misread counts like any other, unless it is more than the bow can give by its stated figures. To have the official asked, write {0}."),
  UNSCREENED(
      "No clause asks about a reading that seems odd: a misread counts like any other, unless it is more than the bow can give by its stated figures. To have the official asked, write {0}, or {1} and {2}."),

  // Further readings, for a sentence
  FURTHER_READING("a further reading"),
  FURTHER_MEAN("the mean of {0} further readings"),
  FURTHER_HIGHEST("the highest of {0} further readings"),
  FURTHER_MEDIAN("the median of {0} further readings"),
  FURTHER_COUNT("at least {0} of {1} further readings"),

  // What is ticked, who is checked, and where the rule is from
  TICKED("The official ticks before the verdict: {0}."),
  TICKED_UNLESS_UNLIMITED(
      "The official ticks before the verdict: {0}; nothing where no limit applies."),
  EVERYONE("Everyone is checked."),
  SHARE("A random share of {0} is checked."),
  ON_REQUEST("Those who ask for it are checked."),
  NAMED_BY_JUDGE("Those whom a judge names are checked."),
  NOT_MEASURED("The rule holds, but it is not measured at this event."),
  ORIGIN("The rule's origin: {0}."),
  ORIGIN_FROM("The rule's origin: {0}, in effect from {1}."),
  IN_EFFECT("In effect from {0}."),
  EDITION("edition {0}");

  private final String english;

  Demand(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
