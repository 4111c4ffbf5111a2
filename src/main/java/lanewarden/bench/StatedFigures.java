package lanewarden.bench;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.Sentence;
import lanewarden.written.CsvCell;
import lanewarden.written.CsvFaults;
import lanewarden.written.CsvRow;

/**
 * The figures of one bow or one arrow, each of which may stand on any of its lines but has to be
 * the same on all of them; for one thread.
 */
final class StatedFigures {

  private record Stated(Quantity<?, ?> value, CsvCell cell) {}

  private final PracticeTold same;
  private final CsvCell label;
  private final CsvFaults faults;
  private final Map<PracticeColumn, Stated> figures = new HashMap<>();
  private final Set<PracticeColumn> filled = EnumSet.noneOf(PracticeColumn.class);

  /**
   * @param same the demand that a figure is the same on all of its lines
   * @param label where it is named first
   */
  StatedFigures(PracticeTold same, CsvCell label, CsvFaults faults) {
    this.same = same;
    this.label = label;
    this.faults = faults;
  }

  CsvCell label() {
    return label;
  }

  /** Takes the figure of a line, if it states one. */
  <Q extends Quantity<?, Q>> Optional<Q> take(
      CsvRow<PracticeColumn> row,
      PracticeColumn column,
      Sentence expected,
      Function<String, Q> parser) {
    if (row.filled(column).isPresent()) {
      filled.add(column);
    }
    Optional<Q> written = row.quantity(column, expected, parser);
    written.ifPresent(value -> take(row.required(column), column, value));
    return written;
  }

  private void take(CsvCell cell, PracticeColumn column, Quantity<?, ?> value) {
    Stated first = figures.putIfAbsent(column, new Stated(value, cell));
    if (first != null && first.value().si().compareTo(value.si()) != 0) {
      faults.note(
          cell,
          Sentence.of(same, column.title(), label.text()),
          Sentence.of(PracticeTold.TWO_FIGURES, value, first.value(), first.cell().line()),
          Sentence.of(PracticeTold.WRITE_ON_BOTH));
    }
  }

  /** Whether no line states it, not even wrongly. */
  boolean lacks(PracticeColumn column) {
    return !filled.contains(column);
  }

  /** The figure, if any line stated it. */
  <Q extends Quantity<?, Q>> Optional<Q> get(PracticeColumn column, Class<Q> kind) {
    return Optional.ofNullable(figures.get(column)).map(stated -> kind.cast(stated.value()));
  }

  /** Where the figure was stated first, if anywhere. */
  Optional<CsvCell> cell(PracticeColumn column) {
    return Optional.ofNullable(figures.get(column)).map(Stated::cell);
  }
}
