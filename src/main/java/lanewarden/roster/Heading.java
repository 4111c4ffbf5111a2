package lanewarden.roster;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody wrote above a column, taken for one of the roster's: its words, and the unit in
 * brackets behind them, such as {@code Arrow (gr)}.
 *
 * @param words without the unit
 * @param unit the unit as a cell would write it; empty where none, or none of the column's kind,
 *     stands there
 */
record Heading(String words, Optional<String> unit) {
  private static final Pattern BRACKETS =
      Pattern.compile("(.*)(?:\\(([^()]*)\\)|\\[([^\\[\\]]*)\\])\\s*", Pattern.DOTALL);
  private static final Pattern BARE = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

  static Heading of(String written, Column column) {
    Matcher found = BRACKETS.matcher(written);
    if (found.matches()) {
      String inside = (found.group(2) == null ? found.group(3) : found.group(2)).strip();
      if (column.units().stream().anyMatch(unit -> unit.spellings().contains(inside))) {
        return new Heading(found.group(1), Optional.of(inside));
      }
    }
    return new Heading(written, Optional.empty());
  }

  /** The cell as a roster writes it: a bare number gets the unit, anything else stays as it is. */
  String complete(String cell) {
    String text = cell.strip();
    return unit.filter(its -> BARE.matcher(text).matches())
        .map(its -> text + " " + its)
        .orElse(text);
  }
}
