package lanewarden.rules;

import java.util.Optional;

/** When a check takes place. */
public enum Phase implements Worded {
  /** At the check-in line, before the first scored arrow. */
  BEFORE("before", "before the event"),
  /** On the course, while scores are shot. */
  DURING("during", "during the event"),
  /** After the last scored arrow, as for winners. */
  AFTER("after", "after the event");

  private final String word;
  private final String phrase;

  Phase(String word, String phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** One word, for files and commands. */
  @Override
  public String word() {
    return word;
  }

  /** In a sentence. */
  public String phrase() {
    return phrase;
  }

  /** The phase with this word. */
  public static Optional<Phase> ofWord(String word) {
    return Worded.find(values(), word);
  }
}
