package lanewarden.audit.comparison;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanewarden.audit.wording.Cell;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.LimitMargin;
import lanewarden.bench.PairDifference;
import lanewarden.bench.Showing;

/**
 * The set-ups of a comparison as an exported table, a row each; behind the figures a column for
 * every division, then one for every other set-up, in words.
 */
final class ComparisonTable {
  private static final int SPEED_DECIMALS = 3;
  private static final int OTHER_DECIMALS = 4;

  private final Comparison comparison;
  private final ComparisonSheet sheet;

  ComparisonTable(Comparison comparison) {
    this.comparison = comparison;
    this.sheet = new ComparisonSheet(comparison);
  }

  /** The rows, headings first. */
  List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(headings());
    comparison.showings().forEach(showing -> rows.add(row(showing)));
    return rows;
  }

  private List<String> headings() {
    String speed = " (" + sheet.unit().symbol() + ")";
    List<String> headings =
        new ArrayList<>(
            List.of(
                "place",
                "bow",
                "arrow",
                "arrow mass",
                "arrow mass (unit)",
                "shots",
                "shots that count",
                "left out",
                "mean" + speed,
                "mean at least" + speed,
                "mean at most" + speed,
                "standard deviation" + speed,
                "kinetic energy (" + sheet.energyUnit().symbol() + ")",
                "momentum (" + sheet.momentumUnit().symbol() + ")"));
    margins(comparison.showings().get(0))
        .forEach(
            margin -> {
              headings.add(Cell.text(margin.division().code() + " allows" + speed));
              headings.add(Cell.text(margin.division().code()));
            });
    comparison
        .showings()
        .forEach(other -> headings.add(Cell.text("than " + other.series().name())));
    return headings;
  }

  private List<String> row(Showing showing) {
    List<String> row = new ArrayList<>();
    row.add(comparison.place(showing).map(String::valueOf).orElse(""));
    row.add(Cell.text(showing.series().bow().label()));
    row.add(Cell.text(showing.series().arrow()));
    row.addAll(Cell.quantity(showing.series().mass()));
    row.add(String.valueOf(showing.series().shots().size()));
    row.add(String.valueOf(showing.counted().size()));
    row.add(
        Cell.text(
            String.join("; ", showing.leftOut().stream().map(out -> out.inWords()).toList())));
    row.add(speed(showing.mean()));
    row.add(speed(showing.interval().map(i -> i.low())));
    row.add(speed(showing.interval().map(i -> i.high())));
    row.add(speed(showing.deviation()));
    row.add(
        showing
            .energy()
            .map(e -> e.to(sheet.energyUnit(), OTHER_DECIMALS).value().toPlainString())
            .orElse(""));
    row.add(
        showing
            .momentum()
            .map(p -> p.to(sheet.momentumUnit(), OTHER_DECIMALS).value().toPlainString())
            .orElse(""));
    margins(showing)
        .forEach(
            margin -> {
              row.add(speed(margin.allowed().map(allowed -> allowed.siDouble())));
              row.add(Cell.text(margin.words()));
            });
    comparison.showings().forEach(other -> row.add(difference(showing, other)));
    return row;
  }

  private List<LimitMargin> margins(Showing showing) {
    return comparison.margins().stream().filter(m -> m.showing().equals(showing)).toList();
  }

  /** Whether one set-up is faster than another, and whether that is real. */
  private String difference(Showing showing, Showing other) {
    for (PairDifference pair : comparison.pairs()) {
      boolean faster = pair.one().equals(showing) && pair.other().equals(other);
      boolean slower = pair.one().equals(other) && pair.other().equals(showing);
      if (faster || slower) {
        return pair.sense() == PairDifference.Sense.REAL
            ? faster ? "really faster" : "really slower"
            : pair.sense().inWords();
      }
    }
    return "";
  }

  private String speed(OptionalDouble metresPerSecond) {
    return metresPerSecond.isEmpty() ? "" : speed(Optional.of(metresPerSecond.getAsDouble()));
  }

  private String speed(Optional<Double> metresPerSecond) {
    return metresPerSecond
        .map(
            v ->
                new BigDecimal(sheet.in(v))
                    .setScale(SPEED_DECIMALS, RoundingMode.HALF_EVEN)
                    .max(BigDecimal.ZERO)
                    .toPlainString())
        .orElse("");
  }
}
