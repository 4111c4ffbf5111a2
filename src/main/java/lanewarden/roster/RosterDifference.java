package lanewarden.roster;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What one roster changes against another, for the competitors.
 *
 * @param gone whom only the earlier one holds, in words, in its order
 * @param changed whom both hold, but otherwise, in words, in the earlier one's order
 * @param fresh whom only the later one holds, in words, in its order
 */
public record RosterDifference(List<String> gone, List<String> changed, List<String> fresh) {

  /** How many changes of a sort a summary names. */
  private static final int NAMED = 4;

  /** Copies the lists. */
  public RosterDifference {
    gone = List.copyOf(gone);
    changed = List.copyOf(changed);
    fresh = List.copyOf(fresh);
  }

  /** What the later roster changes against the earlier. */
  public static RosterDifference between(Roster before, Roster now) {
    List<String> gone = new ArrayList<>();
    List<String> changed = new ArrayList<>();
    for (Competitor was : before.competitors()) {
      Optional<Competitor> is = now.bib(was.bib());
      if (is.isEmpty()) {
        gone.add(named(was) + " is gone");
      } else {
        change(was, is.get()).ifPresent(changed::add);
      }
    }
    List<String> fresh =
        now.competitors().stream()
            .filter(is -> before.bib(is.bib()).isEmpty())
            .map(is -> named(is) + " is new in " + is.division())
            .toList();
    return new RosterDifference(gone, changed, fresh);
  }

  private static Optional<String> change(Competitor was, Competitor is) {
    if (!is.division().equals(was.division())) {
      return Optional.of(named(was) + " goes from " + was.division() + " to " + is.division());
    }
    if (!is.name().equals(was.name())) {
      return Optional.of(named(was) + " is now " + is.name());
    }
    return Objects.equals(was, is)
        ? Optional.empty()
        : Optional.of(named(was) + " has other figures of bow or arrow");
  }

  private static String named(Competitor competitor) {
    return competitor.bib() + " " + competitor.name();
  }

  /** Every change in words: who is gone, who changed, who is new. */
  public List<String> inWords() {
    List<String> all = new ArrayList<>(gone);
    all.addAll(changed);
    all.addAll(fresh);
    return all;
  }

  /**
   * How many there are of each sort, with the first few by name, for example {@code 1 added (113
   * New Guy is new in OC)}; empty where the same competitors stand with the same figures.
   */
  public String summary() {
    return Stream.of(part(fresh, "added"), part(gone, "removed"), part(changed, "changed"))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private static String part(List<String> changes, String what) {
    if (changes.isEmpty()) {
      return "";
    }
    int named = Math.min(NAMED, changes.size());
    String more = changes.size() > named ? ", and " + (changes.size() - named) + " more" : "";
    return changes.size()
        + " "
        + what
        + " ("
        + String.join(", ", changes.subList(0, named))
        + more
        + ")";
  }
}
