package lanewarden.rules;

import lanewarden.quantity.Sentence;

/** The sentences in which a rule says what comes after a verdict. */
public enum Afterwards implements Sentence.Form {
  NO_RECHECK("No re-check after a fail."),
  ONE_BEFORE(
      "After a fail before the event, 1 re-check is allowed; during and after it, a judge rules."),
  SOME_BEFORE(
      "After a fail before the event, {0} re-checks are allowed; during and after it, a judge rules."),
  ONE_WHERE_BROUGHT("Where a fail brings a re-check, 1 re-check is allowed."),
  SOME_WHERE_BROUGHT("Where a fail brings a re-check, {0} re-checks are allowed."),
  /** How far over, and the consequence. */
  OVER_BY("Over by up to {0}: {1}."),
  FAIL_BEFORE("A fail before the event: {0}."),
  FAIL_DURING("A fail during the event: {0}."),
  FAIL_AFTER("A fail after the event: {0}."),
  OTHER_BEFORE("Any other fail before the event: {0}."),
  OTHER_DURING("Any other fail during the event: {0}."),
  OTHER_AFTER("Any other fail after the event: {0}."),
  LAPSES_WITH("A pass lapses with {0}."),
  LAPSES_WITH_TWO("A pass lapses with {0} or {1}."),
  LAPSES_WITH_THREE("A pass lapses with {0}, {1} or {2}.");

  private final String english;

  Afterwards(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
