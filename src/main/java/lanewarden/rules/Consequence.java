package lanewarden.rules;

import java.util.Optional;
import lanewarden.quantity.Sentence;

/** What follows a fail. */
public enum Consequence implements Worded, Sentence.Form {
  /** A new check, as long as the rule leaves one; after the last, a judge rules. */
  RECHECK("re-check", "a re-check, while one is left"),
  /** The archer does not shoot in the event. */
  BARRED("barred", "the archer is barred from the event"),
  /** What was shot with this set-up does not count. */
  STRUCK("struck", "the scores shot with this set-up are struck out"),
  /** A judge rules. */
  JUDGE("judge", "a judge rules");

  private final String word;
  private final String phrase;

  Consequence(String word, String phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** As the rule book writes it. */
  @Override
  public String word() {
    return word;
  }

  /** In a sentence. */
  public String phrase() {
    return phrase;
  }

  @Override
  public String english() {
    return phrase;
  }

  /** The consequence with this word. */
  public static Optional<Consequence> ofWord(String word) {
    return Worded.find(values(), word);
  }
}
