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

  /** Insertions, deletions, replacements and swaps of neighbours from one word to the other. */
  private static int edits(String from, String to) {
    int[][] d = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        d[i][j] =
            Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        if (i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[from.length()][to.length()];
  }
}
