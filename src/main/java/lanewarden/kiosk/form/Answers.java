package lanewarden.kiosk.form;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What was answered to the questions of a form, by their names. */
public final class Answers {
  private final Map<String, String> words;
  private final Map<String, Integer> choices;

  Answers(Map<String, String> words, Map<String, Integer> choices) {
    this.words = Map.copyOf(words);
    this.choices = Map.copyOf(choices);
  }

  /** The words, without blanks around them. */
  public String words(String name) {
    return Objects.requireNonNull(words.get(name), name).strip();
  }

  /** The words, where the question was asked and not left open. */
  public Optional<String> wordsIfAny(String name) {
    return Optional.ofNullable(words.get(name)).map(String::strip).filter(one -> !one.isEmpty());
  }

  /** The words as they were typed, in an array of the caller's own, to be wiped. */
  public char[] secret(String name) {
    return Objects.requireNonNull(words.get(name), name).toCharArray();
  }

  /** The place of the option that was chosen, from 0; negative if none was. */
  public int choice(String name) {
    return Objects.requireNonNull(choices.get(name), name);
  }
}
