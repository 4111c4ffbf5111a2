package lanewarden.station;

import lanewarden.quantity.Sentence;
import lanewarden.written.FileTold;

/** The sentences that tell what is wrong in a form, beside what its files say themselves. */
public enum FormTold implements Sentence.Form {
  /** So many faults are not told one by one. */
  MORE("And {0} more."),
  /** Of a rule book: what was expected, what was found, and what to do in the form. */
  EXPECTED("Expected {0}, found {1}: {2}."),
  EXPECTED_ONLY("Expected {0}: {1}."),
  /** The same where the mend is a question. */
  EXPECTED_ASKED("Expected {0}, found {1}: {2}"),
  FILL_IN("fill it in"),
  TYPE_AGAIN("type it here once more"),
  WHOLE_CHARACTERS("whole characters"),
  TYPE_ONCE_MORE("type it once more"),
  /** Of figures that are typed. */
  SHARE_BELOW("a share of less than 100 %"),
  WRITE_BELOW("write less than 100 %"),
  SPEED_MORE("a speed of more than zero"),
  WRITE_MORE("write more than zero"),
  LIGHTER("{0}, which is lighter than any ({1} at least)"),
  WEIGH_WHOLE("weigh the whole arrow; a mass in grams is typed with its unit, such as \"22.8 g\""),
  MASS_AND_READINGS("a mass, a colon and readings such as \"350 gr: 290 291 289 ft/s\""),
  MASS_FIRST("write the mass first, then its readings with one unit behind them"),
  DRAW_AND_FORCE("a draw and its force such as \"9 in 22 lbf\""),
  EACH_POINT("write draw and force of each point, and a comma between points");

  private final String english;

  FormTold(String english) {
    this.english = english;
  }

  /** What is wrong, in one sentence. */
  static Sentence expected(Sentence expected, Sentence found, Sentence mend) {
    if (found.toString().equals(FileTold.NOTHING.english())) {
      return Sentence.of(EXPECTED_ONLY, expected, mend);
    }
    FormTold form = mend.toString().endsWith("?") ? EXPECTED_ASKED : EXPECTED;
    return Sentence.of(form, expected, found, mend);
  }

  @Override
  public String english() {
    return english;
  }
}
