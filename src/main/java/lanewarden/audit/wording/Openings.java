package lanewarden.audit.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lanewarden.journal.Fact;
import lanewarden.journal.LinePapers;
import lanewarden.journal.Place;

/**
 * How the line was opened, each time by the number of its entry: which instrument stood where.
 *
 * <p>Owned by one thread until it is full; then only read.
 */
public final class Openings {
  private final TreeMap<Long, Fact.StationOpened> byEntry = new TreeMap<>();

  /**
   * An instrument as the line was opened with it, in words.
   *
   * @param budget what makes its readings uncertain, a line each; none where that is not known
   * @param place where it stood, or nothing where that is not known
   * @param papers by which its readings are read, each with its SHA-256
   * @param changed what is otherwise than the row before has it, a line each
   */
  public record Instrument(
      String entries,
      String name,
      String program,
      List<String> budget,
      String place,
      List<String> papers,
      List<String> changed) {}

  /**
   * One of the papers as the report shows it.
   *
   * @param file as which it travels inside the report
   * @param entries the openings that it was signed with, in words
   */
  public record Shown(String file, String name, String sha256, String entries, String text) {}

  /** Keeps an opening of the line. */
  public void add(long entry, Fact.StationOpened opened) {
    byEntry.put(entry, opened);
  }

  /** Where the instrument stood when an entry was written, if that was said. */
  Optional<Place> place(long entry) {
    return Optional.ofNullable(byEntry.lowerEntry(entry)).map(e -> e.getValue().place());
  }

  /** Whether the line was open with an instrument of stated accuracy when an entry was written. */
  boolean statesAccuracy(long entry) {
    return Optional.ofNullable(byEntry.lowerEntry(entry))
        .map(e -> e.getValue().budget())
        .filter(budget -> !budget.isEmpty())
        .isPresent();
  }

  /** Each way in which it was opened, in the order in which it first was. */
  public List<Instrument> pages() {
    Map<LinePapers, List<Long>> entries = new LinkedHashMap<>();
    byEntry.forEach(
        (entry, opened) ->
            entries.computeIfAbsent(new LinePapers(opened), o -> new ArrayList<>()).add(entry));
    List<Instrument> pages = new ArrayList<>();
    LinePapers before = null;
    for (Map.Entry<LinePapers, List<Long>> one : entries.entrySet()) {
      LinePapers now = one.getKey();
      pages.add(page(now, before == null ? List.of() : now.changedFrom(before), one.getValue()));
      before = now;
    }
    return pages;
  }

  /** Each of the papers once, in the order in which they were first signed. */
  public List<Shown> papers() {
    Map<LinePapers.Paper, List<Long>> entries = new LinkedHashMap<>();
    byEntry.forEach(
        (entry, opened) ->
            new LinePapers(opened)
                .papers()
                .forEach(
                    paper -> entries.computeIfAbsent(paper, p -> new ArrayList<>()).add(entry)));
    List<Shown> shown = new ArrayList<>();
    entries.forEach(
        (paper, numbers) ->
            shown.add(
                new Shown(
                    "line-paper-" + (shown.size() + 1) + ".toml",
                    Wording.capital(paper.name()),
                    paper.sha256(),
                    (numbers.size() == 1 ? "the opening in entry " : "the openings in entries ")
                        + Wording.numbers(numbers),
                    paper.text())));
    return shown;
  }

  private static Instrument page(LinePapers papers, List<String> changed, List<Long> entries) {
    Fact.StationOpened opened = papers.opened();
    List<String> budget = opened.budget();
    Place place = opened.place();
    return new Instrument(
        Wording.numbers(entries),
        opened.instrument(),
        opened.program(),
        budget == null ? List.of() : budget,
        place == null
            ? ""
            : place.distance()
                + " from the bow; shafts of "
                + place.shaftDiameter()
                + ", drag coefficient "
                + place.dragCoefficient().toPlainString()
                + ", air of "
                + place.airDensity().toPlainString()
                + " kg/m³",
        papers.papers().stream()
            .map(paper -> Wording.capital(paper.name()) + " " + Wording.shortHash(paper.sha256()))
            .toList(),
        changed);
  }
}
