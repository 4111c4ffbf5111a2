package lanewarden.roster;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** What an official typed to find a competitor. */
final class Lookup {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern BETWEEN_PARTS = Pattern.compile("[\\s\\p{Punct}’]+");

  /** Letters that Unicode does not take apart, as they are typed where a keyboard lacks them. */
  private static final Map<String, String> PLAIN =
      Map.of(
          "ł", "l", "ø", "o", "đ", "d", "ð", "d", "ß", "ss", "æ", "ae", "œ", "oe", "þ", "th", "ı",
          "i");

  private static final int NO_MATCH = 3;

  private final String bib;
  private final List<String> words;

  Lookup(String typed) {
    this.bib = fold(typed.strip());
    this.words = parts(typed);
  }

  List<Competitor> in(List<Competitor> competitors, int most) {
    if (bib.isEmpty()) {
      return List.of();
    }
    return competitors.stream()
        .filter(competitor -> rank(competitor) < NO_MATCH)
        .sorted(Comparator.comparingInt(this::rank))
        .limit(most)
        .toList();
  }

  /** 0 for the very bib, 1 for a bib that starts so, 2 for a name. */
  private int rank(Competitor competitor) {
    String other = fold(competitor.bib());
    if (other.equals(bib)) {
      return 0;
    }
    if (other.startsWith(bib)) {
      return 1;
    }
    List<String> parts = parts(competitor.name());
    boolean named =
        !words.isEmpty()
            && words.stream().allMatch(word -> parts.stream().anyMatch(p -> p.startsWith(word)));
    return named ? 2 : NO_MATCH;
  }

  private static List<String> parts(String text) {
    return Arrays.stream(BETWEEN_PARTS.split(fold(text), -1))
        .filter(part -> !part.isEmpty())
        .toList();
  }

  private static String fold(String text) {
    String bare =
        MARKS
            .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
            .replaceAll("")
            .toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> letter : PLAIN.entrySet()) {
      bare = bare.replace(letter.getKey(), letter.getValue());
    }
    return bare;
  }
}
