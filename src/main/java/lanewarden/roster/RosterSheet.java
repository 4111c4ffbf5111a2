package lanewarden.roster;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lanewarden.written.CsvCell;
import lanewarden.written.CsvSheet;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * A list of competitors as somebody else's program saved it, with columns of any names, and the
 * roster that comes of it once it is said which column is which. Immutable.
 */
public final class RosterSheet {

  /**
   * A column that a roster may have.
   *
   * @param title as the roster's header writes it
   * @param required whether a roster must have it
   */
  public record Wanted(String title, boolean required) {}

  /**
   * The roster that comes of a list.
   *
   * @param csv the text of the roster; each competitor stands on the same line as in the list. A
   *     list that is a roster as it stands is taken byte for byte
   * @param rows what stands in the wanted columns, a list a competitor
   * @param faults what is wrong, with the places in the list
   */
  public record Mapped(String csv, List<List<String>> rows, List<WrittenFault> faults) {

    /** Copies the lists. */
    public Mapped {
      rows = List.copyOf(rows);
      faults = List.copyOf(faults);
    }
  }

  /** Where a cell stands. */
  private record Spot(int line, int column) {
    static Spot of(CsvCell cell) {
      return new Spot(cell.line(), cell.column());
    }
  }

  /** Words that people write above such columns; from memory. */
  private static final Map<Column, Set<String>> USUAL =
      Map.of(
          Column.BIB, Set.of("bib", "bibnumber", "number", "no", "nr", "startnumber", "target"),
          Column.NAME, Set.of("name", "fullname", "archer", "athlete", "competitor", "person"),
          Column.DIVISION, Set.of("division", "class", "category", "style", "bowstyle", "bowclass"),
          Column.ARROW_MASS, Set.of("arrowmass", "arrowweight", "arrow", "mass"),
          Column.DRAW_WEIGHT, Set.of("drawweight", "poundage", "bowweight", "draw"));

  private final String file;
  private final byte[] bytes;
  private final CsvSheet sheet;

  private RosterSheet(String file, byte[] bytes, CsvSheet sheet) {
    this.file = file;
    this.bytes = bytes;
    this.sheet = sheet;
  }

  /**
   * Reads a list of competitors.
   *
   * @param file its name, for the faults; nothing is opened
   * @throws WrittenRefused if it is no table at all
   */
  public static RosterSheet read(String file, byte[] utf8) throws WrittenRefused {
    return new RosterSheet(file, utf8.clone(), CsvSheet.read(file, utf8));
  }

  /** The columns that a roster may have, in order. */
  public static List<Wanted> wanted() {
    return Arrays.stream(Column.values()).map(c -> new Wanted(c.title(), c.isRequired())).toList();
  }

  /** The names of the list's own columns, in order. */
  public List<String> headers() {
    return sheet.header().stream().map(cell -> cell.text().strip()).toList();
  }

  /** How many competitors the list has, faulty lines among them. */
  public int size() {
    return sheet.rows().size() + sheet.faults().size();
  }

  /**
   * Which of the list's columns each wanted one probably is: by its own title first, then by the
   * words that people usually write. What is not found is left out.
   */
  public Map<String, Integer> guess() {
    return places(Map.of());
  }

  /**
   * The same where somebody says of some columns which they are; what was said stands before every
   * guess.
   *
   * @param said each the title of a wanted column, {@code =}, and the heading or the number (from
   *     1) of the list's column; with nothing behind, the roster shall not have it
   * @throws WrittenRefused with everything that was said wrongly
   */
  public Map<String, Integer> places(List<String> said) throws WrittenRefused {
    return places(ToldColumns.read(file, sheet.header(), said));
  }

  private Map<String, Integer> places(Map<Column, OptionalInt> told) {
    Map<String, Integer> places = new LinkedHashMap<>();
    told.forEach((column, place) -> place.ifPresent(at -> places.put(column.title(), at)));
    Set<Integer> taken = new HashSet<>(places.values());
    for (boolean exact : new boolean[] {true, false}) {
      for (Column column : Column.values()) {
        if (!told.containsKey(column) && !places.containsKey(column.title())) {
          place(column, exact, taken)
              .ifPresent(
                  place -> {
                    places.put(column.title(), place);
                    taken.add(place);
                  });
        }
      }
    }
    return places;
  }

  /** The titles of the columns that every roster must have and that have no place here. */
  public static List<String> missing(Map<String, Integer> places) {
    return wanted().stream()
        .filter(Wanted::required)
        .map(Wanted::title)
        .filter(title -> !places.containsKey(title))
        .toList();
  }

  private Optional<Integer> place(Column column, boolean exact, Set<Integer> taken) {
    Set<String> words =
        exact
            ? Set.of(CsvSheet.plain(column.title()))
            : Objects.requireNonNullElse(USUAL.get(column), Set.<String>of());
    for (int place = 0; place < sheet.header().size(); place++) {
      if (!taken.contains(place)
          && words.contains(CsvSheet.plain(heading(place, column).words()))) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  private Heading heading(int place, Column column) {
    return Heading.of(sheet.header().get(place).text(), column);
  }

  /**
   * The roster that comes of it. A bare number takes the unit in brackets of its column's heading;
   * where a cell has a unit of its own, that one holds.
   *
   * @param places of the wanted columns, by their titles, from 0; what the list has not is left out
   * @param divisionCodes those of the rule book; empty to leave the divisions unexamined
   * @throws IllegalArgumentException if a required column has no place
   */
  public Mapped mapped(Map<String, Integer> places, Set<String> divisionCodes) {
    List<Column> columns =
        Arrays.stream(Column.values()).filter(c -> places.containsKey(c.title())).toList();
    if (!missing(places).isEmpty()) {
      throw new IllegalArgumentException("a required column has no place");
    }
    List<Integer> from = columns.stream().map(c -> at(places, c)).toList();
    List<List<CsvCell>> picked = new ArrayList<>();
    for (List<CsvCell> row : sheet.rows()) {
      picked.add(from.stream().map(row::get).toList());
    }
    List<Heading> headings = columns.stream().map(c -> heading(at(places, c), c)).toList();
    String csv = csv(columns, headings, picked);
    List<WrittenFault> faults = new ArrayList<>(sheet.faults());
    if (!picked.isEmpty()) {
      faults.addAll(placed(faultsOf(csv), csv, picked));
    }
    if (!divisionCodes.isEmpty()) {
      faults.addAll(strangers(at(places, Column.DIVISION), divisionCodes));
    }
    faults.sort(Comparator.comparingInt(WrittenFault::line).thenComparingInt(WrittenFault::column));
    return new Mapped(
        faults.isEmpty() && isRoster(places) ? new String(bytes, StandardCharsets.UTF_8) : csv,
        picked.stream().map(row -> texts(headings, row)).toList(),
        faults);
  }

  /** Whether the list is a roster as it stands, whose fingerprint its owner may know. */
  private boolean isRoster(Map<String, Integer> places) {
    Set<Integer> all = new HashSet<>();
    for (int place = 0; place < sheet.header().size(); place++) {
      if (Objects.equals(places.get(sheet.header().get(place).text()), place)) {
        all.add(place);
      }
    }
    return all.size() == sheet.header().size()
        && faultsOf(new String(bytes, StandardCharsets.UTF_8)).isEmpty();
  }

  private static int at(Map<String, Integer> places, Column column) {
    return Objects.requireNonNull(places.get(column.title()));
  }

  private static List<String> texts(List<Heading> headings, List<CsvCell> cells) {
    return IntStream.range(0, cells.size())
        .mapToObj(k -> headings.get(k).complete(cells.get(k).text()))
        .toList();
  }

  /** Empty lines, which a roster may have, keep each competitor on the line of the list. */
  private static String csv(
      List<Column> columns, List<Heading> headings, List<List<CsvCell>> picked) {
    StringBuilder csv = new StringBuilder();
    csv.append(CsvSheet.line(columns.stream().map(Column::title).toList()));
    int next = 2;
    for (List<CsvCell> row : picked) {
      int line = row.stream().mapToInt(CsvCell::line).min().orElse(next);
      csv.append("\n".repeat(Math.max(0, line - next)));
      String text = CsvSheet.line(texts(headings, row));
      csv.append(text);
      next = Math.max(line, next) + (int) text.lines().count();
    }
    return csv.toString();
  }

  private List<WrittenFault> faultsOf(String csv) {
    try {
      Roster.read(file, csv.getBytes(StandardCharsets.UTF_8));
      return List.of();
    } catch (WrittenRefused e) {
      return e.faults();
    }
  }

  /** Also where other things are wrong with the list, so that all can be mended at once. */
  private List<WrittenFault> strangers(int division, Set<String> divisionCodes) {
    return sheet.rows().stream()
        .map(row -> row.get(division))
        .filter(cell -> !cell.text().isBlank() && !divisionCodes.contains(cell.text().strip()))
        .map(cell -> Roster.stranger(file, cell, divisionCodes))
        .toList();
  }

  /** The same faults at the places that the list has for them. */
  private List<WrittenFault> placed(
      List<WrittenFault> faults, String csv, List<List<CsvCell>> picked) {
    Map<Spot, CsvCell> spots = new HashMap<>();
    try {
      List<List<CsvCell>> rows = CsvSheet.read(file, csv.getBytes(StandardCharsets.UTF_8)).rows();
      for (int i = 0; i < rows.size(); i++) {
        for (int k = 0; k < rows.get(i).size(); k++) {
          spots.put(Spot.of(rows.get(i).get(k)), picked.get(i).get(k));
        }
      }
    } catch (WrittenRefused e) {
      throw new IllegalStateException("what was just written is no table", e);
    }
    return faults.stream()
        .map(
            fault ->
                Optional.ofNullable(spots.get(new Spot(fault.line(), fault.column())))
                    .map(cell -> at(fault, cell))
                    .orElse(fault))
        .toList();
  }

  private static WrittenFault at(WrittenFault fault, CsvCell cell) {
    return new WrittenFault(
        fault.file(), cell.line(), cell.column(), fault.expected(), fault.found(), fault.mend());
  }
}
