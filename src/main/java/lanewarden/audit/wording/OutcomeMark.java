package lanewarden.audit.wording;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;

/**
 * An outcome on paper: always a word and a shape, so that it can be told without colour.
 *
 * @param shape one character
 * @param word the fixed word of the journal, or why there is none
 * @param style class of the stylesheet
 */
public record OutcomeMark(String shape, String word, String style) {

  /**
   * The outcome that stands for a check. One in question gets a hollow shape: it counts for
   * nothing, and must not be taken for one that does.
   */
  public static OutcomeMark of(Check check) {
    Optional<Outcome> outcome = check.outcome();
    if (check.inQuestion()) {
      return new OutcomeMark(
          "○", outcome.map(Outcome::word).orElse("no verdict") + ", in question", "open");
    }
    if (outcome.isPresent()) {
      return of(outcome.get());
    }
    return new OutcomeMark("–", check.isClosed() ? "ended without verdict" : "running", "open");
  }

  /** The mark of a check in whose place another counts: hollow, and said first. */
  public OutcomeMark overruled() {
    return new OutcomeMark("○", "overruled (" + word + ")", "open");
  }

  /** The mark of an outcome. */
  public static OutcomeMark of(Outcome outcome) {
    return switch (outcome) {
      case WITHIN -> new OutcomeMark("●", outcome.word(), "within");
      case OVER -> new OutcomeMark("▲", outcome.word(), "over");
      case NOT_DECIDED -> new OutcomeMark("◇", outcome.word(), "open");
      case NOT_ADMITTED -> new OutcomeMark("■", outcome.word(), "over");
    };
  }
}
