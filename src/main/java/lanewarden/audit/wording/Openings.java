package lanewarden.audit.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lanewarden.journal.Fact;
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
   */
  public record Instrument(
      String entries, String name, String program, List<String> budget, String place) {}

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
    Map<Fact.StationOpened, List<Long>> entries = new LinkedHashMap<>();
    byEntry.forEach(
        (entry, opened) -> entries.computeIfAbsent(opened, o -> new ArrayList<>()).add(entry));
    return entries.entrySet().stream().map(e -> page(e.getKey(), e.getValue())).toList();
  }

  private static Instrument page(Fact.StationOpened opened, List<Long> entries) {
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
                + " kg/m³");
  }
}
