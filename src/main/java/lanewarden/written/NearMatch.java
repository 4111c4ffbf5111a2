package lanewarden.written;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one was probably meant to be. */
public final class NearMatch {

  private NearMatch() {}

  /** The known word fewest edits away, if it is at most a third of the word's length away. */
  public static Optional<String> of(String word, Collection<String> known) {
    String lower = word.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(k -> edits(lower, k.toLowerCase(Locale.ROOT)) <= Math.max(1, word.length() / 3))
        .min(Comparator.comparingInt(k -> edits(lower, k.toLowerCase(Locale.ROOT))));
  }

  /** Insertions, deletions and replacements from one word to the other (Levenshtein distance). */
  private static int edits(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int above = row[j];
        int replace = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replace, Math.min(above, row[j - 1]) + 1);
        diagonal = above;
      }
    }
    return row[to.length()];
  }
}
