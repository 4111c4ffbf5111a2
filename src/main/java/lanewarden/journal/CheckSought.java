package lanewarden.journal;

import java.util.List;
import java.util.Locale;

/**
 * A check as somebody names it.
 *
 * @param typed a bib, whose checks are meant, the number of a check, or a name or a part of it; a
 *     bib goes first, but {@code check 16} is never a bib
 */
public record CheckSought(String typed) {

  /** Before a number that is a check's, even where a bib is the same. */
  public static final String NUMBERED = "check ";

  /**
   * The checks that are meant, in the order opened: those of the bib, else the one with the number,
   * else those of the one competitor whose name holds the words; none where there is none, or where
   * {@link #several} are meant.
   */
  public List<Check> among(Standing standing) {
    List<Check> named = byBibOrNumber(standing);
    return named.isEmpty() && several(standing).isEmpty() ? byName(standing) : named;
  }

  /** The competitors, bib and name each, where a name is not enough to say who is meant. */
  public List<String> several(Standing standing) {
    if (!byBibOrNumber(standing).isEmpty()) {
      return List.of();
    }
    List<Check> byName = byName(standing);
    boolean one = byName.stream().map(check -> check.opened().bib()).distinct().count() <= 1;
    return one
        ? List.of()
        : byName.stream()
            .map(check -> check.opened().bib() + " " + check.opened().name())
            .distinct()
            .toList();
  }

  private List<Check> byName(Standing standing) {
    String asked = typed.strip().toLowerCase(Locale.ROOT);
    return asked.isEmpty()
        ? List.of()
        : standing.checks().stream()
            .filter(check -> check.opened().name().toLowerCase(Locale.ROOT).contains(asked))
            .toList();
  }

  private List<Check> byBibOrNumber(Standing standing) {
    String asked = typed.strip();
    boolean byNumber = asked.startsWith(NUMBERED);
    String number = byNumber ? asked.substring(NUMBERED.length()).strip() : asked;
    List<Check> ofBib = byNumber ? List.of() : standing.checksOf(asked);
    return ofBib.isEmpty()
        ? standing.checks().stream()
            .filter(check -> String.valueOf(check.number()).equals(number))
            .toList()
        : ofBib;
  }
}
