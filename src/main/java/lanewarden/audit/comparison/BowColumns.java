package lanewarden.audit.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.wording.Cell;
import lanewarden.bench.BowMass;
import lanewarden.bench.Comparison;
import lanewarden.bench.Rating;
import lanewarden.bench.Showing;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What the exported table says of a set-up's bow: the speed its maker states and makes one expect,
 * and what is believed of its virtual mass.
 */
final class BowColumns {
  private static final int DECIMALS = 1;

  private final Comparison comparison;
  private final SpeedColumns speeds;

  BowColumns(Comparison comparison, SpeedColumns speeds) {
    this.comparison = comparison;
    this.speeds = speeds;
  }

  List<TableColumn> all() {
    List<TableColumn> columns = new ArrayList<>(rating());
    columns.addAll(virtualMass());
    return columns;
  }

  private List<TableColumn> rating() {
    List<TableColumn> columns = new ArrayList<>();
    columns.add(new TableColumn("rated speed", s -> Cell.quantity(rated(s)).get(0)));
    columns.add(new TableColumn("rated speed (unit)", s -> Cell.quantity(rated(s)).get(1)));
    columns.addAll(
        speeds.range(
            "expected by the rating",
            s -> s.expected().map(Rating.Expected::usual),
            s -> s.expected().map(Rating.Expected::range)));
    columns.add(
        TableColumn.words(
            "mean against the rating (by rules of thumb)",
            s -> s.expected().flatMap(e -> s.meanSpeed().map(v -> e.side(v.siDouble())))));
    return columns;
  }

  private static @Nullable Speed rated(Showing showing) {
    return showing.series().bow().rating().map(Rating::speed).orElse(null);
  }

  private List<TableColumn> virtualMass() {
    List<TableColumn> columns = new ArrayList<>();
    columns.add(
        TableColumn.figures(
            "virtual mass by the speeds alone",
            MassUnit.GRAIN,
            DECIMALS,
            s -> mass(s).map(mass -> mass.fitted().value())));
    columns.add(
        TableColumn.figures(
            "virtual mass at least",
            MassUnit.GRAIN,
            DECIMALS,
            s -> mass(s).map(mass -> mass.interval().low())));
    columns.add(
        TableColumn.figures(
            "virtual mass at most",
            MassUnit.GRAIN,
            DECIMALS,
            s -> mass(s).map(mass -> mass.interval().high())));
    columns.add(
        TableColumn.words(
            "virtual mass rests on",
            s ->
                mass(s)
                    .map(
                        mass ->
                            mass.supposedInWords()
                                + (mass.noise()
                                    ? " supposed; the speeds are noise and not used"
                                    : " supposed, and the speeds"))));
    return columns;
  }

  private Optional<BowMass> mass(Showing showing) {
    return comparison.masses().stream()
        .filter(mass -> mass.bow().equals(showing.series().bow()))
        .findFirst();
  }
}
