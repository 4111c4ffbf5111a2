package lanewarden.rules;

import lanewarden.quantity.Sentence;

/**
 * A reading that may be no measurement of an arrow.
 *
 * @param shot its place among the shots of the check, counted from 0
 * @param kind what makes it doubtful
 * @param sentence what it says and what it is held against, with figures
 */
public record Doubt(int shot, Kind kind, Sentence sentence) {

  /** What makes a reading doubtful. */
  public enum Kind implements Sentence.Form {
    /** The bow cannot give the arrow this speed: the reading is void, whoever says what. */
    IMPOSSIBLE("impossible"),
    /** It lies too far from the reading before: an official decides. */
    JUMP("jump"),
    /** It stands out from the others by a statistical test: an official decides. */
    OUTLIER("stands out");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** A word or two, the same on screen, in the ledger and on paper. */
    public String word() {
      return word;
    }

    @Override
    public String english() {
      return word;
    }
  }

  /** In plain words, as they are signed. */
  public String words() {
    return sentence.toString();
  }

  /** Whether an official must let the reading count or declare it void. */
  public boolean isOpen() {
    return kind != Kind.IMPOSSIBLE;
  }
}
