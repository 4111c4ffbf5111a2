package lanewarden.roster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanewarden.written.CsvCell;
import lanewarden.written.CsvSheet;
import lanewarden.written.NearMatch;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * What somebody says of a list's columns, such as {@code bib=Start number}, {@code division=4} or,
 * for one that the roster shall not have, {@code arrow-mass=}; for one thread.
 */
final class ToldColumns {
  private final String file;
  private final List<CsvCell> header;
  private final Map<Column, OptionalInt> places = new LinkedHashMap<>();
  private final List<WrittenFault> faults = new ArrayList<>();

  private ToldColumns(String file, List<CsvCell> header) {
    this.file = file;
    this.header = header;
  }

  /**
   * Where each column stands that somebody spoke of, from 0; empty for one that is not wanted.
   *
   * @param file the list's name, for the faults
   * @param header the list's own
   * @throws WrittenRefused with everything that was said wrongly
   */
  static Map<Column, OptionalInt> read(String file, List<CsvCell> header, List<String> said)
      throws WrittenRefused {
    ToldColumns told = new ToldColumns(file, header);
    said.forEach(told::take);
    if (!told.faults.isEmpty()) {
      throw new WrittenRefused(file, told.faults);
    }
    return told.places;
  }

  private void take(String said) {
    int sign = said.indexOf('=');
    String title = sign < 0 ? said : said.substring(0, sign);
    Optional<Column> column =
        Arrays.stream(Column.values())
            .filter(c -> CsvSheet.plain(c.title()).equals(CsvSheet.plain(title)))
            .findFirst();
    if (sign < 0) {
      wrong("a column and what the list calls it, such as bib=Number", said, "put a = between");
    } else if (column.isEmpty()) {
      List<String> titles = Arrays.stream(Column.values()).map(Column::title).toList();
      wrong(
          "one of the columns of a roster: " + String.join(", ", titles),
          said,
          NearMatch.of(title.strip(), titles)
              .map(near -> "did you mean " + near + "?")
              .orElse("write one of them before the ="));
    } else if (places.containsKey(column.get())) {
      wrong("each column once", said, "say it of " + column.get().title() + " once only");
    } else {
      places.put(column.get(), place(column.get(), said.substring(sign + 1).strip(), said));
    }
  }

  private OptionalInt place(Column column, String which, String said) {
    if (which.isEmpty()) {
      if (column.isRequired()) {
        wrong("a column for " + column.title(), said, "say which it is: every competitor needs it");
      }
      return OptionalInt.empty();
    }
    List<Integer> named = named(which);
    if (named.size() == 1) {
      return OptionalInt.of(named.get(0));
    }
    if (named.isEmpty() && which.matches("[0-9]{1,4}")) {
      int number = Integer.parseInt(which);
      if (number >= 1 && number <= header.size()) {
        return OptionalInt.of(number - 1);
      }
    }
    if (named.isEmpty()) {
      wrong(
          "a heading of the list, or a number from 1 to " + header.size(),
          said,
          NearMatch.of(which, headings())
              .map(near -> "did you mean \"" + near + "\"?")
              .orElse("its headings are " + String.join(", ", headings())));
    } else {
      wrong(
          "a heading that stands once",
          said,
          "say the number: "
              + named.stream().map(n -> Integer.toString(n + 1)).collect(Collectors.joining(", ")));
    }
    return OptionalInt.empty();
  }

  /** Those with this very heading; else those that differ only in capitals, blanks and signs. */
  private List<Integer> named(String which) {
    List<Integer> exact = places(heading -> heading.equals(which));
    String plain = CsvSheet.plain(which);
    return exact.isEmpty() && !plain.isEmpty()
        ? places(heading -> CsvSheet.plain(heading).equals(plain))
        : exact;
  }

  private List<Integer> places(Predicate<String> fits) {
    return IntStream.range(0, header.size())
        .filter(place -> fits.test(headings().get(place)))
        .boxed()
        .toList();
  }

  private List<String> headings() {
    return header.stream().map(cell -> cell.text().strip()).toList();
  }

  private void wrong(String expected, String said, String mend) {
    faults.add(
        new WrittenFault(
            file, header.get(0).line(), 0, expected, "\"" + said.strip() + "\" as told", mend));
  }
}
