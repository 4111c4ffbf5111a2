package lanewarden.audit.comparison;

import java.util.Optional;
import java.util.function.Function;
import lanewarden.audit.wording.Cell;
import lanewarden.bench.Showing;
import lanewarden.quantity.Unit;

/**
 * A column of the table of set-ups.
 *
 * @param heading of the first row, safe for a spreadsheet
 * @param cell what a set-up has in it, safe for a spreadsheet
 */
record TableColumn(String heading, Function<Showing, String> cell) {

  /** Of texts; nothing where there is none. */
  static TableColumn words(String heading, Function<Showing, Optional<String>> words) {
    return new TableColumn(
        Cell.text(heading), showing -> Cell.text(words.apply(showing).orElse("")));
  }

  /**
   * Of figures; nothing where there is none.
   *
   * @param unit they are written in
   * @param figure in SI units
   */
  static TableColumn figures(
      String heading, Unit unit, int decimals, Function<Showing, Optional<Double>> figure) {
    double one = unit.inSi().doubleValue();
    return new TableColumn(
        Cell.text(heading + " (" + unit.symbol() + ")"),
        showing -> Cell.number(figure.apply(showing).map(si -> si / one), decimals));
  }
}
