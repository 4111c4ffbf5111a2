package lanewarden.roster;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.QuantityException;
import lanewarden.written.NearMatch;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;
import org.jspecify.annotations.Nullable;

/** A roster file being read: collects every fault, then refuses the file whole. */
final class RosterPage {
  private static final int LONGEST_NAME = 80;

  /** Heavier than any arrow: finds a draw weight in pounds that slipped into this column. */
  private static final Mass HEAVIEST_ARROW = Mass.of("200", MassUnit.GRAM);

  private final String file;
  private final List<WrittenFault> faults = new ArrayList<>();
  private final Map<String, Cell> bibs = new HashMap<>();
  private final Map<Column, Integer> places = new EnumMap<>(Column.class);

  RosterPage(String file) {
    this.file = file;
  }

  Roster read(byte[] utf8) throws WrittenRefused {
    CsvPage csv = CsvPage.of(file, WrittenText.of(file, utf8));
    faults.addAll(csv.faults());
    List<Roster.Listed> listed = new ArrayList<>();
    if (csv.rows().isEmpty()) {
      fault(
          new Cell("", 1, 1),
          "a header line such as bib,name,division",
          "nothing",
          "write the header, then a line for each competitor");
    } else if (header(csv.rows().get(0))) {
      rows(csv.rows(), listed);
    }
    if (!faults.isEmpty()) {
      faults.sort(
          Comparator.comparingInt(WrittenFault::line).thenComparingInt(WrittenFault::column));
      throw new WrittenRefused(file, faults);
    }
    return new Roster(file, listed, utf8);
  }

  /** Whether the columns that every row needs are known. */
  private boolean header(List<Cell> cells) {
    if (cells.size() == 1 && cells.get(0).text().matches(".*[;\\t].*")) {
      fault(cells.get(0), "commas between the columns", cells.get(0), "separate with commas");
      return false;
    }
    for (int i = 0; i < cells.size(); i++) {
      title(cells.get(i), i);
    }
    boolean complete = true;
    for (Column column : Column.values()) {
      if (column.required() && !places.containsKey(column)) {
        complete = false;
        fault(
            cells.get(0),
            "a column " + column.title(),
            "a header without it",
            "add " + column.title() + " to the header and a value to every line");
      }
    }
    return complete;
  }

  private void title(Cell cell, int place) {
    Column column = Column.titled(cell.text()).orElse(null);
    if (column == null) {
      fault(
          cell,
          "one of the columns " + String.join(", ", Column.titles()),
          cell,
          NearMatch.of(cell.text(), Column.titles())
              .map(near -> "did you mean " + near + "?")
              .orElse("take the column out"));
    } else if (places.putIfAbsent(column, place) != null) {
      fault(cell, "each column once", cell, "take the second one out");
    }
  }

  private void rows(List<List<Cell>> rows, List<Roster.Listed> listed) {
    int width = rows.get(0).size();
    for (List<Cell> row : rows.subList(1, rows.size())) {
      if (row.size() == width) {
        listed.add(listed(row));
      } else {
        fault(
            row.get(Math.min(width, row.size() - 1)),
            width + " fields, as in the header",
            row.size() + " fields",
            "add or remove commas; put quotes around a field that holds a comma");
      }
    }
    if (rows.size() == 1 && faults.isEmpty()) {
      fault(rows.get(0).get(0), "a competitor", "a header only", "add a line for each competitor");
    }
  }

  private Roster.Listed listed(List<Cell> row) {
    Cell bib = cell(row, Column.BIB);
    Cell name = cell(row, Column.NAME);
    Cell division = cell(row, Column.DIVISION);
    requireBib(bib);
    requireWords(name, "a name");
    requireWords(division, "a division code");
    Mass mass = declared(row, Column.ARROW_MASS, "a mass such as \"350 gr\"", Mass::parse);
    if (mass != null && mass.isMoreThan(HEAVIEST_ARROW)) {
      fault(
          cell(row, Column.ARROW_MASS),
          "the mass of an arrow, at most " + HEAVIEST_ARROW,
          "\"" + mass + "\"",
          "look whether it belongs to another column or unit");
    }
    Force draw = declared(row, Column.DRAW_WEIGHT, "a force such as \"60 lbf\"", Force::parse);
    return new Roster.Listed(
        new Competitor(bib.text(), name.text(), division.text(), mass, draw),
        division.line(),
        division.column());
  }

  private Cell cell(List<Cell> row, Column column) {
    return row.get(places.getOrDefault(column, 0));
  }

  private void requireBib(Cell bib) {
    if (!bib.text().matches("[A-Za-z0-9-]{1,12}")) {
      fault(
          bib,
          "a bib of 1 to 12 letters, digits or hyphens",
          bib,
          "write it as the bib and its barcode show it");
      return;
    }
    Cell first = bibs.putIfAbsent(bib.text().toUpperCase(Locale.ROOT), bib);
    if (first != null) {
      fault(
          bib,
          "a bib that nobody else has",
          "\"" + bib.text() + "\", already on line " + first.line(),
          "give each competitor their own bib, and one line only");
    }
  }

  private void requireWords(Cell cell, String what) {
    String text = cell.text();
    if (text.isBlank()
        || text.length() > LONGEST_NAME
        || text.chars().anyMatch(Character::isISOControl)) {
      fault(
          cell,
          what + " of 1 to " + LONGEST_NAME + " characters on one line",
          cell,
          "write " + what);
    } else if (!text.equals(text.strip())) {
      fault(cell, what + " without spaces around it", cell, "take the spaces out");
    }
  }

  private <Q extends Quantity<?, Q>> @Nullable Q declared(
      List<Cell> row, Column column, String expected, Function<String, Q> parser) {
    if (!places.containsKey(column) || cell(row, column).text().isEmpty()) {
      return null;
    }
    Cell cell = cell(row, column);
    try {
      Q quantity = parser.apply(cell.text());
      if (quantity.value().signum() > 0) {
        return quantity;
      }
      fault(
          cell, expected + ", more than zero", cell, "write what was declared, or leave it empty");
    } catch (QuantityException e) {
      fault(cell, expected, cell, e.mend() + ", or leave it empty");
    }
    return null;
  }

  private void fault(Cell at, String expected, Cell found, String mend) {
    String text = found.text();
    fault(
        at,
        expected,
        text.isEmpty()
            ? "nothing"
            : "\"" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "\"",
        mend);
  }

  private void fault(Cell at, String expected, String found, String mend) {
    faults.add(new WrittenFault(file, at.line(), at.column(), expected, found, mend));
  }
}
