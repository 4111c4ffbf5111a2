package lanewarden.rules;

import lanewarden.quantity.Sentence;

/**
 * The sentences of a verdict's reason, and the parts they are made of, each in the words that are
 * signed.
 */
public enum Because implements Sentence.Form {
  // What the readings say
  READING("reading {0}"),
  MEAN("mean {0}"),
  HIGHEST("highest of {0} readings {1}"),
  MEDIAN("median {0}"),
  MEDIAN_AT_MOST("median at most {0} whatever is still outstanding"),
  MEDIAN_AT_LEAST("median at least {0} whatever is still outstanding"),
  ENOUGH_WITHIN("{0} of {1} readings within ({2}), {3} needed"),
  TOO_MANY_OVER("{0} of {1} readings over ({2}), {3} within needed"),
  FIRST_WITHIN("first within is {0}"),
  NONE_WITHIN("none of {0} readings within: {1}"),
  SHOWN("{0}"),
  /** A reading, and beside it what it is in the unit or kind of the limit. */
  BESIDE("{0} ({1})"),

  // What they are held against
  AGAINST("{0}, {1}"),
  LIMIT("limit {0}"),
  LIMIT_BELOW("limit: below {0}"),
  PLUS("{0} plus {1}"),
  PLUS_ACCURACY("{0} plus instrument accuracy {1} × {2}"),
  COMES_TO("{0} = {1}"),
  LIMIT_ROUNDED_DOWN("{0}, rounded down to {1}"),
  LIMIT_ROUNDED_NEAREST("{0}, rounded to the nearest {1}: {2}"),
  LESS_GUARD("{0}, less a guard band of {1} (guarded acceptance): {2}"),
  PLUS_GUARD("{0}, and a guard band of {1} above it (guarded rejection): {2}"),
  FOR_ARROW("{0} for an arrow of {1}"),

  // What was done to the readings before
  TREATED("{0}; each reading first {1}"),
  RAISED("raised by {0} to the speed at the bow"),
  RAISED_THEN("raised by {0} to the speed at the bow, then {1}"),
  ROUNDED_DOWN("rounded down to whole steps of {0}"),
  ROUNDED_NEAREST("rounded to the nearest step of {0}, halves up"),
  NOT_ROUNDED("not rounded"),

  // How far over
  HOW_FAR_OVER("{0}; how far over is told by {1}, {2}"),
  THE_MEAN("the mean"),
  THE_HIGHEST("the highest reading"),
  THE_MEDIAN("the median"),
  THE_SLOWEST("the slowest reading"),
  THE_SLOWEST_BUT("the slowest but {0} of the readings"),

  // Bow and arrow
  ARROW_MASS(SetUp.ARROW_MASS),
  DRAW_AS_SET(SetUp.DRAW_WEIGHT),
  DRAW_CERTIFIED(SetUp.CERTIFIED_DRAW_WEIGHT),
  DRAW_GREATER("the greater of the draw weights as set and certified"),
  FIGURE("{0} {1}"),
  TOO_LITTLE("{0}, at least {1}"),
  TOO_MUCH("{0}, at most {1}"),
  ARROW_TOO_LIGHT("arrow mass {0}, at least {1} × {2} = {3}"),
  NOTHING_LIMITED("nothing is limited"),
  AS_ASKED("bow and arrow are as asked ({0}), and no limit applies"),
  HEAVY_ENOUGH("no limit applies: the arrow of {0} has {1} or more at {2}"),

  // What is missing
  ONE_MORE_READING("at least 1 more reading"),
  MORE_READINGS("at least {0} more readings"),
  SHOT_LEFT("1 shot left of {0}, {1} needed"),
  SHOTS_LEFT("{0} shots left of {1}, {2} needed"),
  VOID_READING("1 void reading, {0} forgiven"),
  VOID_READINGS("{0} void readings, {1} forgiven"),
  TOO_FAR_APART("readings from {0} to {1}, at most {2} apart"),
  TO_BE_STATED("to be stated first: {0}"),
  TO_BE_TICKED("to be ticked: {0}"),
  IN_DOUBT("in doubt: {0}. Let it count or declare it void, with a reason"),
  NOT_MEASURED("the limit is not measured at this event"),

  // What speaks against a reading
  OF_SHOT("shot {0}: {1}"),
  JUMPED("shot {0}: {1} is {2} from shot {3} ({4}), more than {5}"),
  STANDS_OUT("shot {0}: {1} stands out from {2} by {3} (statistic {4}, critical value {5})"),
  OTHERS("the others of shots 1 to {0}"),
  OTHERS_UNASKED("those of shots 1 to {0} that were not let count");

  private final String english;

  Because(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
