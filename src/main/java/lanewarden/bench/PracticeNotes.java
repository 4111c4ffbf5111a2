package lanewarden.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.CsvFaults;
import lanewarden.written.CsvRow;
import lanewarden.written.CsvText;
import lanewarden.written.WrittenRefused;

/**
 * A practice day while it is shot: the lines of its file, in the order in which they came. Every
 * cell of a file that was opened stays as it was written. Immutable.
 */
public final class PracticeNotes {
  /** The header stands on the first line. */
  private static final int FIRST_LINE = 2;

  private record Row(int line, Map<PracticeColumn, String> cells) {
    String at(PracticeColumn column) {
      return cells.getOrDefault(column, "");
    }
  }

  private final List<Row> rows;

  private PracticeNotes(List<Row> rows) {
    this.rows = List.copyOf(rows);
  }

  /** Before the first shot. */
  public static PracticeNotes none() {
    return new PracticeNotes(List.of());
  }

  /**
   * The lines of a practice file, to go on with.
   *
   * @throws WrittenRefused as {@link Practice#read} does
   */
  public static PracticeNotes of(Practice practice) throws WrittenRefused {
    List<Row> rows = new ArrayList<>();
    CsvFaults faults = new CsvFaults(practice.file());
    for (CsvRow<PracticeColumn> row :
        PracticeColumn.TABLE.read(practice.file(), practice.utf8(), faults)) {
      Map<PracticeColumn, String> cells = new EnumMap<>(PracticeColumn.class);
      for (PracticeColumn column : PracticeColumn.values()) {
        row.filled(column).ifPresent(cell -> cells.put(column, cell.text()));
      }
      rows.add(new Row(row.required(PracticeColumn.BOW).line(), cells));
    }
    faults.refuseIfAny();
    return new PracticeNotes(rows);
  }

  /** The set-up of the last line, if there is one. */
  public Optional<PracticeSetUp> last() {
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(rows.get(rows.size() - 1))
            .map(
                row ->
                    PracticeSetUp.known(row.at(PracticeColumn.BOW), row.at(PracticeColumn.ARROW)));
  }

  /** With one more shot; figures are written where no line before states them. */
  public PracticeNotes with(PracticeSetUp setUp, Speed speed) {
    Map<PracticeColumn, String> cells = stated(setUp);
    cells
        .keySet()
        .removeIf(
            column -> rows.stream().anyMatch(row -> isOf(row, setUp, column) && has(row, column)));
    return plus(setUp, speed, cells);
  }

  private PracticeNotes plus(
      PracticeSetUp setUp, Speed speed, Map<PracticeColumn, String> figures) {
    Map<PracticeColumn, String> cells = new EnumMap<>(PracticeColumn.class);
    cells.putAll(figures);
    cells.put(PracticeColumn.BOW, setUp.bow());
    cells.put(PracticeColumn.ARROW, setUp.arrow());
    cells.put(PracticeColumn.SPEED, speed.toString());
    List<Row> more = new ArrayList<>(rows);
    more.add(new Row(0, cells));
    return numbered(more);
  }

  private static boolean has(Row row, PracticeColumn column) {
    return !row.at(column).isEmpty();
  }

  /** Whether a line is about the bow, or for the arrow's mass the arrow. */
  private static boolean isOf(Row row, PracticeSetUp setUp, PracticeColumn column) {
    return column == PracticeColumn.ARROW_MASS
        ? row.at(PracticeColumn.ARROW).equals(setUp.arrow())
        : row.at(PracticeColumn.BOW).equals(setUp.bow());
  }

  private static Map<PracticeColumn, String> stated(PracticeSetUp setUp) {
    Map<PracticeColumn, Optional<? extends Quantity<?, ?>>> figures =
        new EnumMap<>(PracticeColumn.class);
    figures.put(PracticeColumn.ARROW_MASS, setUp.mass());
    figures.put(PracticeColumn.DRAW_WEIGHT, setUp.drawWeight());
    figures.put(PracticeColumn.DRAW_LENGTH, setUp.drawLength());
    figures.put(PracticeColumn.BRACE_HEIGHT, setUp.braceHeight());
    figures.put(PracticeColumn.RATED_SPEED, setUp.rating().map(Rating::speed));
    figures.put(PracticeColumn.RATED_DRAW_WEIGHT, setUp.rating().map(Rating::drawWeight));
    figures.put(PracticeColumn.RATED_DRAW_LENGTH, setUp.rating().map(Rating::drawLength));
    figures.put(PracticeColumn.RATED_ARROW_MASS, setUp.rating().map(Rating::arrow));
    Map<PracticeColumn, String> written = new EnumMap<>(PracticeColumn.class);
    figures.forEach(
        (column, figure) -> figure.ifPresent(value -> written.put(column, value.toString())));
    return written;
  }

  /**
   * A set-up with all that is known of its bow and arrow, to be shot beside what was.
   *
   * @param file the notes' name, for the faults
   * @throws WrittenRefused with every fault, if it cannot be: no name, no mass of the arrow, a
   *     figure that contradicts one stated before, or one set-up too many
   */
  public PracticeSetUp completed(String file, PracticeSetUp setUp) throws WrittenRefused {
    Speed any = Speed.of("300", SpeedUnit.FEET_PER_SECOND);
    List<Series> series = plus(setUp, any, stated(setUp)).practice(file).series();
    return series.stream()
        .filter(shot -> shot.isOf(setUp))
        .map(PracticeSetUp::of)
        .findFirst()
        .orElseThrow();
  }

  /**
   * With what somebody says of a shot being a misread.
   *
   * @param line of the file
   * @throws IllegalArgumentException if no shot stands there
   */
  public PracticeNotes marked(int line, PracticeShot.Word word) {
    int at =
        IntStream.range(0, rows.size())
            .filter(i -> rows.get(i).line() == line)
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no shot on line " + line));
    Map<PracticeColumn, String> cells = new EnumMap<>(PracticeColumn.class);
    cells.putAll(rows.get(at).cells());
    cells.put(PracticeColumn.MISREAD, word.written());
    List<Row> changed = new ArrayList<>(rows);
    changed.set(at, new Row(line, cells));
    return numbered(changed);
  }

  private static PracticeNotes numbered(List<Row> rows) {
    return new PracticeNotes(
        IntStream.range(0, rows.size())
            .mapToObj(i -> new Row(FIRST_LINE + i, rows.get(i).cells()))
            .toList());
  }

  /**
   * The practice day so far.
   *
   * @param file the notes' name
   * @throws WrittenRefused if nothing was shot yet, or the lines contradict each other
   */
  public Practice practice(String file) throws WrittenRefused {
    return Practice.read(file, Practice.utf8(text()));
  }

  private String text() {
    List<PracticeColumn> columns = List.of(PracticeColumn.values());
    List<List<String>> lines = new ArrayList<>();
    lines.add(columns.stream().map(PracticeColumn::title).toList());
    rows.forEach(row -> lines.add(columns.stream().map(row::at).toList()));
    return CsvText.of(lines);
  }
}
