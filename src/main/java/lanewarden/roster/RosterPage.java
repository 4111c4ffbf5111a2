package lanewarden.roster;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lanewarden.quantity.Extremes;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.PowerStroke;
import lanewarden.quantity.Sentence;
import lanewarden.written.CsvCell;
import lanewarden.written.CsvFaults;
import lanewarden.written.CsvRow;
import lanewarden.written.CsvTable;
import lanewarden.written.WrittenRefused;

/** The competitors' lines of a roster file being read; for one thread. */
final class RosterPage {
  private static final CsvTable<Column> TABLE =
      new CsvTable<>(
          Column.class,
          "bib,name,division",
          RosterTold.COMPETITOR,
          RosterTold.WRITE_HEADER,
          RosterTold.ADD_LINES);

  private final CsvFaults faults;
  private final Map<String, CsvCell> bibs = new HashMap<>();

  private final Mass lightest;

  private RosterPage(CsvFaults faults, Mass lightest) {
    this.faults = faults;
    this.lightest = lightest;
  }

  /**
   * @param lightest what an arrow weighs at least
   * @throws WrittenRefused with every fault
   */
  static Roster read(String file, byte[] utf8, Mass lightest) throws WrittenRefused {
    CsvFaults faults = new CsvFaults(file);
    RosterPage page = new RosterPage(faults, lightest);
    List<Roster.Listed> listed =
        TABLE.read(file, utf8, faults).stream().map(page::competitor).toList();
    faults.refuseIfAny();
    return new Roster(file, listed, utf8);
  }

  private Roster.Listed competitor(CsvRow<Column> row) {
    CsvCell bib = row.required(Column.BIB);
    CsvCell name = row.required(Column.NAME);
    CsvCell division = row.required(Column.DIVISION);
    requireBib(bib);
    row.requireWords(name, RosterTold.NAME);
    row.requireWords(division, RosterTold.DIVISION_CODE);
    Optional<Mass> mass =
        row.quantity(Column.ARROW_MASS, Sentence.of(FigureTold.MASS, "350 gr"), Mass::parse);
    row.atLeast(Column.ARROW_MASS, mass, FigureTold.WHOLE_ARROW, lightest);
    row.atMost(Column.ARROW_MASS, mass, FigureTold.ARROW, Extremes.HEAVIEST_ARROW);
    Optional<Force> draw = force(row, Column.DRAW_WEIGHT);
    Optional<Force> certified = force(row, Column.CERTIFIED_DRAW_WEIGHT);
    Optional<Length> drawLength = length(row, Column.DRAW_LENGTH);
    Optional<Length> braceHeight = length(row, Column.BRACE_HEIGHT);
    row.atMost(Column.DRAW_LENGTH, drawLength, FigureTold.DRAW_LENGTH, Extremes.LONGEST_DRAW);
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

  private static Optional<Force> force(CsvRow<Column> row, Column column) {
    return row.quantity(column, Sentence.of(FigureTold.FORCE, "60 lbf"), Force::parse);
  }

  private static Optional<Length> length(CsvRow<Column> row, Column column) {
    return row.quantity(column, Sentence.of(FigureTold.LENGTH, "29 in"), Length::parse);
  }

  private void noStroke(CsvRow<Column> row, PowerStroke none) {
    faults.note(
        row.required(Column.BRACE_HEIGHT),
        PowerStroke.DEMANDED,
        none.figures(),
        Sentence.of(FigureTold.EXCHANGED));
  }

  private void requireBib(CsvCell bib) {
    if (!bib.text().matches("[A-Za-z0-9-]{1,12}")) {
      faults.wrong(bib, Sentence.of(RosterTold.BIB), Sentence.of(RosterTold.AS_SHOWN));
      return;
    }
    CsvCell first = bibs.putIfAbsent(bib.text().toUpperCase(Locale.ROOT), bib);
    if (first != null) {
      faults.note(
          bib,
          Sentence.of(RosterTold.BIB_OF_ITS_OWN),
          Sentence.of(RosterTold.BIB_AGAIN, bib.text(), first.line()),
          Sentence.of(RosterTold.OWN_BIB));
    }
  }
}
