package lanewarden.station;

import lanewarden.quantity.Sentence;

/** The sentences that tell what the numbers about a rule hold for, or why there are none. */
public enum Reckoned implements Sentence.Form {
  NO_LIMIT("There is no limit, so no shot is measured."),
  NOBODY_MEASURED(
      "The limit holds, but nobody is measured: at the line nobody passes or is failed."),
  HEAVY_ARROW(
      "No limit applies to the supposed arrow of {0}: it holds only for one of less than {1}, here less than {2}. To see what it does, suppose a lighter arrow, or leave the arrow out."),
  UNLIMITED("No limit applies to the supposed bow and arrow."),
  AT_THE_BOW("These are speeds at the bow, to which the readings are raised."),
  LET_COUNT("Every reading that the official is asked about is taken to be let count."),
  NO_RECHECK("No re-check is counted, as not every fail before the event brings one."),
  SOME_RECHECKS("Of the {0} re-checks that the rule allows before the event, {1} are counted."),
  ONE_RECHECK("The re-check that the rule allows before the event is counted."),
  ALL_RECHECKS("The {0} re-checks that the rule allows before the event are counted."),
  LIGHT_ARROW(
      "The supposed arrow has {0}: the speed limit holds only for one of less than {1}, here less than {2}."),
  CALCULATED("calculated"),
  SIMULATED("simulated from {0} archers a speed, ± {1} in 100");

  private final String english;

  Reckoned(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
