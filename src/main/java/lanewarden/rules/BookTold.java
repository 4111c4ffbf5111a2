package lanewarden.rules;

import lanewarden.quantity.Sentence;

/** The sentences that tell what is wrong in a rule book. */
public enum BookTold implements Sentence.Form {
  CODE("1 to 12 letters, digits or hyphens"),
  SHORT_CODE("write a short code such as \"OC\""),
  NAME("a text of one line and at most {0} characters"),
  FEWER_WORDS("say it in fewer words"),
  FEWER_WORDS_ON_A_LINE("say it in fewer words, on one line"),
  ONE_LINE("a text of one line"),
  SOME_WORDS("write some words on one line"),
  OWN_CODE("a code that no other division has, in small or capital letters"),
  SECOND_TIME("\"{0}\" a second time"),
  GIVE_OWN_CODE("give each division its own code"),
  DIVISIONS_AT_MOST("at most {0} [[division]] tables"),
  ONE_DIVISION("at least one [[division]] table"),
  NONE("none"),
  ADD_DIVISION("add a [[division]] section"),
  WRITE_FORMAT("write format = {0} on the first line"),
  OTHER_FORMAT("write the rule book in format 1, or take the Lanewarden version it was made for"),
  SPEED_FROM("a speed from {0} to {1}"),
  PERCENTAGE_FROM("a percentage from {0} to {1}"),
  ENERGY_FROM("a kinetic energy from {0} to {1}"),
  DRAW_WEIGHT_FROM("a draw weight from {0} to {1}"),
  PER_POUND_FROM("an arrow mass per draw weight from {0} to {1}"),
  CHECK_FIGURE("check the figure and its unit"),
  ENERGY("a kinetic energy such as \"{0}\""),
  DRAW_WEIGHT("a draw weight such as \"{0}\""),
  LIMIT("a speed such as \"300 ft/s\", or \"none\""),
  GUARD("a speed such as \"0.5 ft/s\" or a percentage such as \"0.2 %\""),
  TOLERANCE(
      "\"none\", a percentage such as \"3 %\", a speed such as \"2 ft/s\" or \"instrument accuracy\""),
  ACCURACY("a percentage of more than zero such as \"0.5 %\", or a speed"),
  ROUNDING("\"none\", \"down to 1 ft/s\" or \"nearest 1 ft/s\", with the step of your rule"),
  HOW_AND_STEP("write \"none\", or how and to which step"),
  STEP_MORE_THAN_ZERO("write a step of more than zero"),
  UNIT_OF_LIMIT("a speed in {0}, the unit of the limit"),
  IN_UNIT("write it in {0}"),
  IN_UNIT_OR_SHARE("write it in {0} or as a percentage"),
  /** Why a key is left out. */
  NO_SPEED_LIMIT("limit = \"none\" sets no speed limit that it could belong to"),
  NO_ENERGY_LIMIT("there is no energy limit that it could belong to"),
  GUARDED_ONLY("only guarded acceptance and guarded rejection use it"),
  ONLY_USER("only {0} = \"{1}\" uses it"),
  NO_LIMIT("there is no limit to measure against"),
  NO_DRAW_WEIGHT("no clause of this division asks for a draw weight"),
  NO_SHOT("no shot of this division is measured"),
  NOT_CHECKED("nothing of this division is checked"),
  FROM_SPEED_LIMIT("they are counted from a speed limit and nothing else"),
  NO_TEST("no outlier test is asked for that it could belong to"),
  ABOUT_SPEED("a guard band is set about a speed limit alone"),
  NO_SPREAD("a single reading has no spread"),
  NONE_BEFORE("a single reading has none before it"),
  TEST_TAKES("the test takes {0} readings"),
  K_OF_N("only \"k of n\" uses it"),
  /** Two keys of which one rules the other out. */
  TOGETHER("{0} together with {1}"),
  TOGETHER_AS("{0} together with {1} = {2}"),
  OUT_OR_OWN_DIVISION("take it out, or write the energy limit as a division of its own"),
  OUT_OR_COUNT_MORE("take it out, or count more readings"),
  OUT_OR_K_OF_N("take it out, or decide by \"k of n\""),
  TENTH("at most a tenth of the limit"),
  NARROWER("take a narrower one: it stands for the doubt about a reading"),
  DIXON_AT_MOST("a test of {0} readings; Dixon's table ends with {1}"),
  GRUBBS_OR_FEWER("write \"Grubbs at 5 %\", or count fewer readings"),
  TEST("\"Grubbs at 5 %\", another level, or \"Dixon at 5 %\""),
  NAME_TEST("name the test and its level"),
  DIXON_LEVEL("write 5 %, the level of Dixon's table here"),
  LEVEL("take a level from 0.1 % to 20 %"),
  MORE_THAN_LEAST_ARROW("more than {0}, the least arrow: else nobody admitted has a speed limit"),
  RAISE_OR_LOWER("raise it, or lower {0}"),
  AT_LEAST_DRAW("at least {0}, the least draw weight"),
  OTHER_TEXT("another text than those before it, in small or capital letters"),
  SECOND_OUT("take the second one out"),
  SHARE("a percentage of more than 0 and at most 100 such as \"20 %\""),
  SHARE_DRAWN("write how many percent of the division are drawn"),
  OTHER_CONSEQUENCE("another consequence, since rechecks = 0 leaves no re-check"),
  ALLOW_RECHECK("allow a re-check, or write barred, struck or judge"),
  BAND("a band such as \"up to 1 %: re-check\""),
  WRITE_BAND("write it as \"up to 1 %: re-check\""),
  BAND_MORE_THAN_ZERO("write how far over it reaches, more than zero"),
  BEHIND_COLON("write one of re-check, barred, struck, judge behind the colon"),
  FURTHER("a band that reaches further than the one before"),
  IN_ORDER("put them in order, the narrowest first"),
  BAND_HOLDS("a band in which some reading lies that is {0}"),
  WIDER("make it wider, or round readings to a smaller step"),
  SHOTS_AT_LEAST("at least {0}, as many as are counted"),
  MORE_SHOTS("allow more shots or count fewer readings"),
  VOIDS_OF_ONE("at most {0}, since a pass takes {1} of the 1 shot"),
  VOIDS("at most {0}, since a pass takes {1} of the {2} shots"),
  FORGIVE_FEWER("forgive fewer or allow more shots"),
  WITHIN_AT_MOST("at most {0}, as many as are counted"),
  ASK_FEWER("ask for fewer within or count more readings");

  private final String english;

  BookTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
