package lanewarden.roster;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.PowerStroke;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.QuantityException;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/** The competitors' lines of a roster file being read; for one thread. */
final class RosterPage {
  private static final int LONGEST_NAME = 80;

  private final Header header;
  private final Faults faults;
  private final Map<String, Cell> bibs = new HashMap<>();

  private RosterPage(Header header, Faults faults) {
    this.header = header;
    this.faults = faults;
  }

  /**
   * @throws WrittenRefused with every fault
   */
  static Roster read(String file, byte[] utf8) throws WrittenRefused {
    Faults faults = new Faults(file);
    List<List<Cell>> rows = CsvPage.rows(WrittenText.of(file, utf8), faults);
    List<Roster.Listed> listed = new ArrayList<>();
    if (rows.isEmpty()) {
      if (faults.none()) {
        faults.note(
            new Cell("", 1, 1),
            "a header line such as bib,name,division",
            "nothing",
            "write the header, then a line for each competitor");
      }
    } else {
      Header header = new Header(rows.get(0), faults);
      if (header.complete()) {
        listed.addAll(new RosterPage(header, faults).listed(rows.subList(1, rows.size())));
      }
      if (rows.size() == 1 && faults.none()) {
        faults.note(
            rows.get(0).get(0), "a competitor", "a header only", "add a line for each competitor");
      }
    }
    faults.refuseIfAny();
    return new Roster(file, listed, utf8);
  }

  private List<Roster.Listed> listed(List<List<Cell>> rows) {
    List<Roster.Listed> listed = new ArrayList<>();
    int width = header.width();
    for (List<Cell> row : rows) {
      if (row.size() == width) {
        listed.add(competitor(row));
      } else {
        faults.note(
            row.get(Math.min(width, row.size() - 1)),
            width + " fields, as in the header",
            String.valueOf(row.size()),
            "add or remove commas; put quotes around a field that holds a comma");
      }
    }
    return listed;
  }

  private Roster.Listed competitor(List<Cell> row) {
    Cell bib = header.cell(row, Column.BIB).orElseThrow();
    Cell name = header.cell(row, Column.NAME).orElseThrow();
    Cell division = header.cell(row, Column.DIVISION).orElseThrow();
    requireBib(bib);
    requireWords(name, "a name");
    requireWords(division, "a division code");
    Optional<Mass> mass =
        declared(row, Column.ARROW_MASS, "a mass such as \"350 gr\"", Mass::parse);
    atMost(row, Column.ARROW_MASS, mass, "the mass of an arrow", Competitor.HEAVIEST_ARROW);
    Optional<Force> draw = force(row, Column.DRAW_WEIGHT);
    Optional<Force> certified = force(row, Column.CERTIFIED_DRAW_WEIGHT);
    Optional<Length> drawLength = length(row, Column.DRAW_LENGTH);
    Optional<Length> braceHeight = length(row, Column.BRACE_HEIGHT);
    atMost(row, Column.DRAW_LENGTH, drawLength, "a draw length", Competitor.LONGEST_DRAW);
    drawLength
        .flatMap(length -> braceHeight.map(brace -> new PowerStroke(length, brace)))
        .filter(stroke -> !stroke.isSome())
        .ifPresent(none -> noStroke(row, none));
    return new Roster.Listed(
        new Competitor(
            bib.text(),
            name.text(),
            division.text(),
            mass.orElse(null),
            draw.orElse(null),
            certified.orElse(null),
            drawLength.orElse(null),
            braceHeight.orElse(null)),
        division.line(),
        division.column());
  }

  private Optional<Force> force(List<Cell> row, Column column) {
    return declared(row, column, "a force such as \"60 lbf\"", Force::parse);
  }

  private Optional<Length> length(List<Cell> row, Column column) {
    return declared(row, column, "a length such as \"29 in\"", Length::parse);
  }

  private <Q extends Quantity<?, Q>> void atMost(
      List<Cell> row, Column column, Optional<Q> declared, String what, Q most) {
    if (declared.isPresent() && declared.get().isMoreThan(most)) {
      faults.note(
          header.cell(row, column).orElseThrow(),
          what + ", at most " + most,
          "\"" + declared.get() + "\"",
          "look whether it belongs to another column or unit");
    }
  }

  private void noStroke(List<Cell> row, PowerStroke none) {
    faults.note(
        header.cell(row, Column.BRACE_HEIGHT).orElseThrow(),
        "a power stroke: a brace height of less than the draw length less "
            + PowerStroke.BEHIND_PIVOT,
        "\"" + none.braceHeight() + "\" with a draw length of " + none.drawLength(),
        "measure both, and look whether the two were exchanged");
  }

  private void requireBib(Cell bib) {
    if (!bib.text().matches("[A-Za-z0-9-]{1,12}")) {
      faults.wrong(
          bib,
          "a bib of 1 to 12 letters, digits or hyphens",
          "write it as the bib and its barcode show it");
      return;
    }
    Cell first = bibs.putIfAbsent(bib.text().toUpperCase(Locale.ROOT), bib);
    if (first != null) {
      faults.note(
          bib,
          "a bib that nobody else has",
          "\"" + bib.text() + "\", already on line " + first.line(),
          "give each competitor their own bib, and one line only");
    }
  }

  private void requireWords(Cell cell, String what) {
    String text = cell.text();
    if (text.isBlank() || text.length() > LONGEST_NAME || !WrittenText.isPlain(text)) {
      faults.wrong(
          cell, what + " of 1 to " + LONGEST_NAME + " characters on one line", "write " + what);
    } else if (!text.equals(text.strip())) {
      faults.wrong(cell, what + " without spaces around it", "take the spaces out");
    }
  }

  private <Q extends Quantity<?, Q>> Optional<Q> declared(
      List<Cell> row, Column column, String expected, Function<String, Q> parser) {
    Optional<Cell> cell = header.cell(row, column).filter(c -> !c.text().isEmpty());
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      Q quantity = parser.apply(cell.get().text());
      if (quantity.value().signum() > 0) {
        return Optional.of(quantity);
      }
      faults.wrong(
          cell.get(), expected + ", more than zero", "write what was declared, or leave it empty");
    } catch (QuantityException e) {
      faults.wrong(cell.get(), expected, e.mend() + ", or leave it empty");
    }
    return Optional.empty();
  }
}
