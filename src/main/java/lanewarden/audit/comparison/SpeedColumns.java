package lanewarden.audit.comparison;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.bench.Showing;
import lanewarden.metrology.Interval;
import lanewarden.quantity.SpeedUnit;

/**
 * Columns of speeds in one unit; what they are made from is in m/s.
 *
 * @param unit they are written in
 */
record SpeedColumns(SpeedUnit unit) {
  private static final int DECIMALS = 3;

  TableColumn figure(String heading, Function<Showing, Optional<Double>> figure) {
    return TableColumn.figures(heading, unit, DECIMALS, figure);
  }

  /** A figure, and the ends of the interval it lies in. */
  List<TableColumn> range(
      String heading,
      Function<Showing, Optional<Double>> figure,
      Function<Showing, Optional<Interval>> interval) {
    return List.of(
        figure(heading, figure),
        figure(heading + " at least", showing -> interval.apply(showing).map(Interval::low)),
        figure(heading + " at most", showing -> interval.apply(showing).map(Interval::high)));
  }
}
