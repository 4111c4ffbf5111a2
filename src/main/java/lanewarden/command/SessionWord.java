package lanewarden.command;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A word that can be typed in a session; each session has an enum of its own. */
interface SessionWord {

  /** Where the meanings stand in a list of words. */
  int COLUMN = 31;

  /** The word, in capitals. */
  String name();

  /** What follows the word. */
  String after();

  /** What it does. */
  String meaning();

  /** Whether a script's next line is a passphrase. */
  boolean asksPassphrase();

  /** What follows the word in a typed line. */
  default String rest(String typed) {
    return typed.substring(name().length()).strip();
  }

  /** The word with what follows it. */
  default String form() {
    return (name().toLowerCase(Locale.ROOT) + " " + after()).strip();
  }

  /** The word that begins a typed line; empty if none of these does. */
  static <W extends SessionWord> Optional<W> first(W[] words, String typed) {
    String word = typed.split("\\s+", 2)[0].toUpperCase(Locale.ROOT);
    return Arrays.stream(words).filter(w -> w.name().equals(word)).findFirst();
  }

  /** All of these words, a line each. */
  static String list(SessionWord[] words) {
    return Arrays.stream(words)
        .map(
            w -> {
              String form = w.form();
              return "  " + form + " ".repeat(Math.max(2, COLUMN - form.length())) + w.meaning();
            })
        .collect(Collectors.joining("\n"));
  }
}
