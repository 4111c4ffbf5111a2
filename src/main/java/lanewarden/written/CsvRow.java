package lanewarden.written;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;

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
  public void requireWords(CsvCell cell, Sentence.Form what) {
    Sentence words = Sentence.of(what);
    String text = cell.text();
    if (text.isBlank() || text.length() > LONGEST_WORDS || !WrittenText.isPlain(text)) {
      faults.wrong(
          cell,
          Sentence.of(CsvTold.WORDS, words, LONGEST_WORDS),
          Sentence.of(CsvTold.WRITE, words));
    } else if (!text.equals(text.strip())) {
      faults.wrong(
          cell, Sentence.of(CsvTold.WITHOUT_SPACES, words), Sentence.of(CsvTold.SPACES_OUT));
    }
  }

  /** A value with its unit, more than zero; empty where none is written, or a wrong one. */
  public <Q extends Quantity<?, Q>> Optional<Q> quantity(
      C column, Sentence expected, Function<String, Q> parser) {
    return filled(column).flatMap(cell -> read(cell, expected, true, parser));
  }

  /** The same in a column where something must be written. */
  public <Q extends Quantity<?, Q>> Optional<Q> requiredQuantity(
      C column, Sentence expected, Function<String, Q> parser) {
    return read(required(column), expected, false, parser);
  }

  private <Q extends Quantity<?, Q>> Optional<Q> read(
      CsvCell cell, Sentence expected, boolean mayBeEmpty, Function<String, Q> parser) {
    try {
      Q quantity = parser.apply(cell.text());
      if (quantity.value().signum() > 0) {
        return Optional.of(quantity);
      }
      faults.wrong(
          cell,
          Sentence.of(CsvTold.MORE_THAN_ZERO, expected),
          Sentence.of(mayBeEmpty ? CsvTold.WRITE_DECLARED : CsvTold.WRITE_MEASURED));
    } catch (QuantityException e) {
      faults.wrong(cell, expected, mayBeEmpty ? Sentence.of(CsvTold.OR_EMPTY, e.mend()) : e.mend());
    }
    return Optional.empty();
  }

  /** Notes a value that is less than any of its kind. */
  public <Q extends Quantity<?, Q>> void atLeast(
      C column, Optional<Q> written, Sentence.Form what, Q least) {
    written
        .filter(least::isMoreThan)
        .ifPresent(
            q ->
                faults.wrong(
                    required(column),
                    Sentence.of(CsvTold.AT_LEAST, Sentence.of(what), least),
                    Sentence.of(CsvTold.OTHER_COLUMN_OR_MEASURED)));
  }

  /** Notes a value that is more than any of its kind. */
  public <Q extends Quantity<?, Q>> void atMost(
      C column, Optional<Q> written, Sentence.Form what, Q most) {
    written
        .filter(quantity -> quantity.isMoreThan(most))
        .ifPresent(
            q ->
                faults.wrong(
                    required(column),
                    Sentence.of(CsvTold.AT_MOST, Sentence.of(what), most),
                    Sentence.of(CsvTold.OTHER_COLUMN_OR_UNIT)));
  }
}
