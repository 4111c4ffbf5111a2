package lanewarden.written;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.quantity.Sentence;

/**
 * The first line of a CSV file: which column stands where.
 *
 * @param <C> the columns that a file of its kind may have
 */
final class CsvHeader<C extends Enum<C> & CsvColumn> {
  private final List<CsvCell> cells;
  private final List<C> columns;
  private final Map<C, Integer> places;

  /** Reads the line and notes what is wrong with it. */
  CsvHeader(Class<C> kind, List<CsvCell> cells, CsvFaults faults) {
    this.cells = cells;
    this.columns = Arrays.asList(kind.getEnumConstants());
    this.places = new EnumMap<>(kind);
    if (cells.size() == 1 && cells.get(0).text().matches(".*[;\\t].*")) {
      faults.wrong(cells.get(0), Sentence.of(CsvTold.COMMAS), Sentence.of(CsvTold.SEPARATE));
      return;
    }
    for (int i = 0; i < cells.size(); i++) {
      title(i, faults);
    }
    for (C column : columns) {
      if (column.isRequired() && !places.containsKey(column)) {
        faults.note(
            cells.get(0),
            Sentence.of(CsvTold.COLUMN, column.title()),
            Sentence.of(CsvTold.WITHOUT),
            Sentence.of(CsvTold.ADD_COLUMN, column.title()));
      }
    }
  }

  private void title(int place, CsvFaults faults) {
    CsvCell cell = cells.get(place);
    List<String> titles = columns.stream().map(C::title).toList();
    Optional<C> column = columns.stream().filter(c -> c.title().equals(cell.text())).findFirst();
    if (column.isEmpty()) {
      faults.wrong(
          cell,
          Sentence.of(CsvTold.ONE_OF, String.join(", ", titles)),
          NearMatch.of(cell.text(), titles)
              .map(near -> Sentence.of(FileTold.NEAR, near))
              .orElse(Sentence.of(CsvTold.COLUMN_OUT)));
    } else if (places.putIfAbsent(column.get(), place) != null) {
      faults.wrong(cell, Sentence.of(CsvTold.ONCE), Sentence.of(CsvTold.SECOND_OUT));
    }
  }

  /** Whether the columns that every line needs are there, so that lines can be read. */
  boolean complete() {
    return columns.stream().filter(C::isRequired).allMatch(places::containsKey);
  }

  /** How many fields every line must have. */
  int width() {
    return cells.size();
  }

  /** The cell of a line in a column, if the file has that column. */
  Optional<CsvCell> cell(List<CsvCell> row, C column) {
    return Optional.ofNullable(places.get(column)).map(row::get);
  }
}
