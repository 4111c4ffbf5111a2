package lanewarden.audit.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.wording.Cell;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.LeftOut;
import lanewarden.bench.LimitMargin;
import lanewarden.bench.PairDifference;
import lanewarden.bench.Showing;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * The set-ups of a comparison as an exported table, a row each: what was shot, what the rating
 * makes one expect, what is believed of the bow's virtual mass, then five columns for every
 * division and four for every set-up it is held against. The page {@code practice-format.md} names
 * them all.
 */
final class ComparisonTable {
  private static final int DECIMALS = 4;

  private final Comparison comparison;
  private final ComparisonSheet sheet;
  private final SpeedColumns speeds;

  ComparisonTable(Comparison comparison) {
    this.comparison = comparison;
    this.sheet = new ComparisonSheet(comparison);
    this.speeds = new SpeedColumns(sheet.unit());
  }

  /** The rows, headings first. */
  List<List<String>> rows() {
    List<TableColumn> columns = new ArrayList<>(shot());
    columns.addAll(new BowColumns(comparison, speeds).all());
    List<LimitMargin> limits = margins(comparison.showings().get(0));
    for (int i = 0; i < limits.size(); i++) {
      columns.addAll(limit(i, limits.get(i).division().code()));
    }
    comparison.showings().forEach(other -> columns.addAll(difference(other)));
    List<List<String>> rows = new ArrayList<>();
    rows.add(columns.stream().map(TableColumn::heading).toList());
    for (Showing showing : comparison.showings()) {
      rows.add(columns.stream().map(column -> column.cell().apply(showing)).toList());
    }
    return rows;
  }

  private List<TableColumn> shot() {
    List<TableColumn> columns = new ArrayList<>();
    columns.add(TableColumn.words("place", s -> comparison.place(s).map(String::valueOf)));
    columns.add(TableColumn.words("bow", s -> Optional.of(s.series().bow().label())));
    columns.add(TableColumn.words("arrow", s -> Optional.of(s.series().arrow())));
    columns.add(new TableColumn("arrow mass", s -> Cell.quantity(s.series().mass()).get(0)));
    columns.add(new TableColumn("arrow mass (unit)", s -> Cell.quantity(s.series().mass()).get(1)));
    columns.add(new TableColumn("shots", s -> String.valueOf(s.series().shots().size())));
    columns.add(new TableColumn("shots that count", s -> String.valueOf(s.counted().size())));
    columns.add(TableColumn.words("left out", s -> Optional.of(leftOut(s))));
    columns.addAll(
        speeds.range("mean", s -> s.mean().stream().boxed().findFirst(), Showing::interval));
    columns.add(
        speeds.figure("standard deviation", s -> s.deviation().stream().boxed().findFirst()));
    columns.add(
        TableColumn.figures(
            "kinetic energy",
            sheet.energyUnit(),
            DECIMALS,
            s -> s.energy().map(e -> e.siDouble())));
    columns.add(
        TableColumn.figures(
            "momentum", sheet.momentumUnit(), DECIMALS, s -> s.momentum().map(p -> p.siDouble())));
    return columns;
  }

  private static String leftOut(Showing showing) {
    return new Sentence.Row("; ", showing.leftOut().stream().map(LeftOut::inWords).toList())
        .toString();
  }

  private List<TableColumn> limit(int index, String code) {
    List<TableColumn> columns = new ArrayList<>();
    columns.add(
        speeds.figure(code + " allows", s -> margins(s).get(index).allowed().map(Speed::siDouble)));
    columns.addAll(
        speeds.range(
            "margin to the limit of " + code,
            s -> margins(s).get(index).margin(),
            s -> margins(s).get(index).interval()));
    columns.add(
        TableColumn.words(
            "mean against the limit of " + code + " (no verdict)",
            s -> Optional.of(margins(s).get(index).words().toString())));
    return columns;
  }

  private List<LimitMargin> margins(Showing showing) {
    return comparison.margins().stream().filter(m -> m.showing().equals(showing)).toList();
  }

  /** How much faster a set-up is than another, less than nothing where it is slower. */
  private List<TableColumn> difference(Showing other) {
    String name = other.series().name();
    List<TableColumn> columns =
        new ArrayList<>(
            speeds.range(
                "faster than " + name + " by",
                s -> pair(s, other).map(pair -> pair.differenceOf(s)),
                s -> pair(s, other).flatMap(pair -> pair.intervalOf(s))));
    columns.add(
        TableColumn.words(
            "difference from " + name, s -> pair(s, other).map(pair -> pair.wordsOf(s))));
    return columns;
  }

  private Optional<PairDifference> pair(Showing showing, Showing other) {
    return comparison.pairs().stream().filter(pair -> pair.isOf(showing, other)).findFirst();
  }
}
