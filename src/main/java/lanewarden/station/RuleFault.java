package lanewarden.station;

import java.util.Optional;
import lanewarden.quantity.Sentence;

/**
 * One thing wrong in a rule book that is being written.
 *
 * @param section 0 for the event and what stands above it, else the division, counted from 1
 * @param key the key in that section as the file names it; empty where the fault is about none
 * @param expected what a right rule book has there
 * @param found what stands there
 * @param mend what to do about it, in the form
 */
public record RuleFault(
    int section, Optional<String> key, Sentence expected, Sentence found, Sentence mend) {

  /** Whether the fault is about a key that the form has a field for. */
  public boolean isAbout(RuleKey other) {
    return key.filter(other.word()::equals).isPresent();
  }

  /** In one sentence. */
  public Sentence inWords() {
    return FormTold.expected(expected, found, mend);
  }
}
