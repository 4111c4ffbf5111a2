package lanewarden.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** One of a closed set of things, each with a word of its own in files. */
interface Worded {

  /** As the rule book writes it. */
  String word();

  /** All of them by their words, in the order in which a fault lists them. */
  static <W extends Worded> Map<String, W> words(W[] all) {
    Map<String, W> words = new LinkedHashMap<>();
    for (W one : all) {
      words.put(one.word(), one);
    }
    return words;
  }

  /** The one with this word. */
  static <W extends Worded> Optional<W> find(W[] all, String word) {
    return Optional.ofNullable(words(all).get(word));
  }
}
