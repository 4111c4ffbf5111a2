package lanewarden.written;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.QuantityException;

/**
 * A line of a CSV file with as many fields as its header. What is wrong with a value is noted, and
 * the value is then as good as none; for one thread.
 *
 * @param <C> the columns that a file of its kind may have
 */
public final class CsvRow<C extends Enum<C> & CsvColumn> {
  private static final int LONGEST_WORDS = 80;

  private final CsvHeader<C> header;
  private final List<CsvCell> cells;
  private final CsvFaults faults;

  CsvRow(CsvHeader<C> header, List<CsvCell> cells, CsvFaults faults) {
    this.header = header;
    this.cells = cells;
    this.faults = faults;
  }

  /** Its field in a column that every file of the kind has. */
  public CsvCell required(C column) {
    return header.cell(cells, column).orElseThrow();
  }

  /** Its field in a column, if the file has that column and the field is not empty. */
  public Optional<CsvCell> filled(C column) {
    return header.cell(cells, column).filter(c -> !c.text().isEmpty());
  }

  /**
   * Notes a text that is no name: blank, too long, on several lines or with spaces around it.
   *
   * @param what it is, with its article
   */
  public void requireWords(CsvCell cell, String what) {
    String text = cell.text();
    if (text.isBlank() || text.length() > LONGEST_WORDS || !WrittenText.isPlain(text)) {
      faults.wrong(
          cell, what + " of 1 to " + LONGEST_WORDS + " characters on one line", "write " + what);
    } else if (!text.equals(text.strip())) {
      faults.wrong(cell, what + " without spaces around it", "take the spaces out");
    }
  }

  /** A value with its unit, more than zero; empty where none is written, or a wrong one. */
  public <Q extends Quantity<?, Q>> Optional<Q> quantity(
      C column, String expected, Function<String, Q> parser) {
    return filled(column)
        .flatMap(cell -> read(cell, expected, "declared", ", or leave it empty", parser));
  }

  /** The same in a column where something must be written. */
  public <Q extends Quantity<?, Q>> Optional<Q> requiredQuantity(
      C column, String expected, Function<String, Q> parser) {
    return read(required(column), expected, "measured", "", parser);
  }

  private <Q extends Quantity<?, Q>> Optional<Q> read(
      CsvCell cell, String expected, String how, String orElse, Function<String, Q> parser) {
    try {
      Q quantity = parser.apply(cell.text());
      if (quantity.value().signum() > 0) {
        return Optional.of(quantity);
      }
      faults.wrong(cell, expected + ", more than zero", "write what was " + how + orElse);
    } catch (QuantityException e) {
      faults.wrong(cell, expected, e.mend() + orElse);
    }
    return Optional.empty();
  }

  /** Notes a value that is less than any of its kind. */
  public <Q extends Quantity<?, Q>> void atLeast(
      C column, Optional<Q> written, String what, Q least) {
    written
        .filter(least::isMoreThan)
        .ifPresent(
            q ->
                faults.wrong(
                    required(column),
                    what + ", at least " + least,
                    "look whether it belongs to another column, or was measured in another unit"));
  }

  /** Notes a value that is more than any of its kind. */
  public <Q extends Quantity<?, Q>> void atMost(
      C column, Optional<Q> written, String what, Q most) {
    written
        .filter(quantity -> quantity.isMoreThan(most))
        .ifPresent(q -> beyond(column, what + ", at most " + most));
  }

  private void beyond(C column, String expected) {
    faults.wrong(required(column), expected, "look whether it belongs to another column or unit");
  }
}
