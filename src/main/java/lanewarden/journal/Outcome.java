package lanewarden.journal;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.stream.Stream;
import lanewarden.rules.Verdict;

/** How a check ended, in the fixed word that stands in the ledger. */
public enum Outcome {
  /** The limit is kept. */
  WITHIN("within"),
  /** The limit is exceeded. */
  OVER("over"),
  /** The shots or the forgiven voids were spent before the rule could decide. */
  NOT_DECIDED("not decided"),
  /** Another clause than the speed limit keeps the competitor out. */
  NOT_ADMITTED("not admitted");

  private final String word;

  Outcome(String word) {
    this.word = word;
  }

  /** The outcome of a verdict. */
  public static Outcome of(Verdict verdict) {
    return ofWord(verdict.word());
  }

  /**
   * The outcome with this word.
   *
   * @throws IllegalArgumentException if there is none
   */
  @JsonCreator
  public static Outcome ofWord(String word) {
    return Stream.of(values())
        .filter(o -> o.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no outcome is called \"" + word + "\""));
  }

  /** The word on screen, in the ledger and on paper. */
  @JsonValue
  public String word() {
    return word;
  }
}
