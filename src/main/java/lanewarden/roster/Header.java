package lanewarden.roster;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.written.NearMatch;

/** The roster's first line: which column stands where. */
final class Header {
  private final List<Cell> cells;
  private final Map<Column, Integer> places = new EnumMap<>(Column.class);

  /** Reads the line and notes what is wrong with it. */
  Header(List<Cell> cells, Faults faults) {
    this.cells = cells;
    if (cells.size() == 1 && cells.get(0).text().matches(".*[;\\t].*")) {
      faults.wrong(cells.get(0), "commas between the columns", "separate with commas");
      return;
    }
    for (int i = 0; i < cells.size(); i++) {
      title(i, faults);
    }
    for (Column column : Column.required()) {
      if (!places.containsKey(column)) {
        faults.note(
            cells.get(0),
            "a column " + column.title(),
            "a header without it",
            "add " + column.title() + " to the header and a value to every line");
      }
    }
  }

  private void title(int place, Faults faults) {
    Cell cell = cells.get(place);
    Optional<Column> column = Column.titled(cell.text());
    if (column.isEmpty()) {
      faults.wrong(
          cell,
          "one of the columns " + String.join(", ", Column.titles()),
          NearMatch.of(cell.text(), Column.titles())
              .map(near -> "did you mean " + near + "?")
              .orElse("take the column out"));
    } else if (places.putIfAbsent(column.get(), place) != null) {
      faults.wrong(cell, "each column once", "take the second one out");
    }
  }

  /** Whether the columns that every competitor needs are there, so that rows can be read. */
  boolean complete() {
    return Column.required().stream().allMatch(places::containsKey);
  }

  /** How many fields every row must have. */
  int width() {
    return cells.size();
  }

  /** The cell of a row in a column, if the roster has that column. */
  Optional<Cell> cell(List<Cell> row, Column column) {
    return Optional.ofNullable(places.get(column)).map(row::get);
  }
}
