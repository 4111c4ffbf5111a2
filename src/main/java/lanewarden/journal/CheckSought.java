package lanewarden.journal;

import java.util.List;

/**
 * A check as somebody names it.
 *
 * @param typed a bib, whose checks are meant, or the number of a check; a bib goes first, but
 *     {@code check 16} is never a bib
 */
public record CheckSought(String typed) {

  /** Before a number that is a check's, even where a bib is the same. */
  public static final String NUMBERED = "check ";

  /** The checks that are meant, in the order opened; none where there is none. */
  public List<Check> among(Standing standing) {
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
