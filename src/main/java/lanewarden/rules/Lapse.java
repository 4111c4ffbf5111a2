package lanewarden.rules;

import java.util.Optional;
import lanewarden.quantity.Sentence;

/** What makes a pass lapse, so that the archer must be checked again. */
public enum Lapse implements Worded, Sentence.Form {
  /** The archer shoots another bow. */
  ANOTHER_BOW("another bow"),
  /** The archer shoots another arrow. */
  ANOTHER_ARROW("another arrow"),
  /** The archer shoots in another class. */
  ANOTHER_CLASS("another class");

  private final String word;

  Lapse(String word) {
    this.word = word;
  }

  /** As the rule book writes it. */
  @Override
  public String word() {
    return word;
  }

  /** In a sentence. */
  @Override
  public String english() {
    return word;
  }

  /** The lapse with this word. */
  public static Optional<Lapse> ofWord(String word) {
    return Worded.find(values(), word);
  }
}
