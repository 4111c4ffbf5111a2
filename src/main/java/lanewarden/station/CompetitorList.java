package lanewarden.station;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanewarden.roster.RosterSheet;
import lanewarden.rules.Division;
import lanewarden.written.NearMatch;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * A list of competitors as somebody brings it, which of its columns are which of the roster's, and
 * the roster that comes of it. Immutable.
 *
 * @param file the list's name
 * @param sheet the list
 * @param columns which of its columns are taken, from 0 by the roster's title
 * @param mapped the roster that comes of it; empty where a column has no place that it must have
 */
public record CompetitorList(
    String file,
    RosterSheet sheet,
    Map<String, Integer> columns,
    Optional<RosterSheet.Mapped> mapped) {

  /**
   * What becomes of a column of the list.
   *
   * @param number from 1
   * @param heading as the list writes it
   * @param titles of the roster's columns for which it is taken; none where it is left out
   * @param near what a column that is left out may have been meant for
   */
  public record Column(int number, String heading, List<String> titles, Optional<String> near) {

    /** Copies the list. */
    public Column {
      titles = List.copyOf(titles);
    }
  }

  /**
   * Reads a list.
   *
   * @param said of its columns, as {@link RosterSheet#places} takes it; the others are guessed
   * @param rules the rule book whose divisions it must keep to, or an event's folder with one;
   *     empty to leave the divisions unexamined
   * @throws StationException if a file cannot be read, the rule book is faulty, the list is no
   *     table, or something was said wrongly of its columns
   */
  public static CompetitorList read(Path list, List<String> said, Optional<Path> rules)
      throws StationException {
    Set<String> divisions = new LinkedHashSet<>();
    if (rules.isPresent()) {
      WrittenRules.book(rules.get()).divisions().stream()
          .map(Division::code)
          .forEach(divisions::add);
    }
    NewEvent.Source source = NewEvent.Source.of(list);
    try {
      RosterSheet sheet = RosterSheet.read(source.name(), source.bytes());
      return of(source.name(), sheet, sheet.places(said), divisions);
    } catch (WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  /** A list of which it is known which column is which. */
  static CompetitorList of(
      String file, RosterSheet sheet, Map<String, Integer> columns, Set<String> divisions) {
    return new CompetitorList(
        file,
        sheet,
        columns,
        RosterSheet.missing(columns).isEmpty()
            ? Optional.of(sheet.mapped(columns, divisions))
            : Optional.empty());
  }

  /**
   * Something wrong with the list.
   *
   * @param line of the list, from 1
   * @param column from 1, in characters; 0 where the whole line is meant
   * @param expected what a right list has there
   * @param found what stands there
   * @param mend what to do about it
   * @param words all of it, with the list's name, on one line
   */
  public record Fault(
      int line, int column, String expected, String found, String mend, String words) {}

  /** Everything wrong with it, at the places of the list itself. */
  public List<Fault> faults() {
    return written().stream()
        .map(
            fault ->
                new Fault(
                    fault.line(),
                    fault.column(),
                    fault.expected().toString(),
                    fault.found().toString(),
                    fault.mend().toString(),
                    fault.toString()))
        .toList();
  }

  private List<WrittenFault> written() {
    return mapped
        .map(RosterSheet.Mapped::faults)
        .orElseGet(() -> RosterSheet.missing(columns).stream().map(this::missing).toList());
  }

  private WrittenFault missing(String title) {
    return new WrittenFault(
        file,
        1,
        0,
        "a column for " + title,
        "the headings " + String.join(", ", sheet.headers()),
        "say which of them it is, by its heading or its number: " + title + "=HEADING");
  }

  /** What becomes of each of the list's columns, in their order. */
  public List<Column> fates() {
    List<String> titles = RosterSheet.wanted().stream().map(RosterSheet.Wanted::title).toList();
    List<String> open = titles.stream().filter(title -> !columns.containsKey(title)).toList();
    List<Column> fates = new ArrayList<>();
    for (int place = 0; place < sheet.headers().size(); place++) {
      int here = place;
      String heading = sheet.headers().get(place);
      List<String> taken =
          titles.stream().filter(title -> columns.getOrDefault(title, -1) == here).toList();
      fates.add(
          new Column(
              place + 1,
              heading,
              taken,
              taken.isEmpty() ? NearMatch.of(heading, open) : Optional.empty()));
    }
    return fates;
  }

  /** The columns of which nothing is taken. */
  public List<Column> leftOut() {
    return fates().stream().filter(column -> column.titles().isEmpty()).toList();
  }

  /**
   * The roster as the event gets it.
   *
   * @throws StationException if anything is wrong with the list, with every fault
   */
  public NewEvent.Source roster() throws StationException {
    List<WrittenFault> faults = written();
    if (!faults.isEmpty()) {
      throw StationException.of(new WrittenRefused(file, faults));
    }
    return new NewEvent.Source(
        EventFolder.ROSTER, mapped.orElseThrow().csv().getBytes(StandardCharsets.UTF_8));
  }
}
