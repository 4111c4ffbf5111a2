package lanewarden.journal;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * The checks, each under its competitor, and what counts of them.
 *
 * <p>Owned by the standing's thread.
 */
final class Accounts {
  private final Map<Long, Check> checks = new LinkedHashMap<>();
  private final Map<String, SortedSet<Long>> numbersByBib = new LinkedHashMap<>();
  private final Map<String, Outcome> lastOutcomes = new LinkedHashMap<>();

  /** For a check that is no recheck the one whose outcome counts. */
  private final UnaryOperator<Check> counting;

  Accounts(UnaryOperator<Check> counting) {
    this.counting = counting;
  }

  /** Takes a check, or another state of it; it may be another competitor's now. */
  void put(Check check) {
    Check before = checks.put(check.number(), check);
    String bib = check.opened().bib();
    numbersByBib.computeIfAbsent(bib, b -> new TreeSet<>()).add(check.number());
    if (before != null && !before.opened().bib().equals(bib)) {
      numbers(before.opened().bib()).remove(check.number());
      countAnew(before.opened().bib());
    }
    countAnew(bib);
  }

  private SortedSet<Long> numbers(String bib) {
    return numbersByBib.getOrDefault(bib, new TreeSet<>());
  }

  private void countAnew(String bib) {
    Optional<Outcome> last =
        past(bib, Long.MAX_VALUE).all().stream()
            .filter(check -> !check.inQuestion())
            .flatMap(check -> check.outcome().stream())
            .reduce((earlier, later) -> later);
    if (last.isPresent()) {
      lastOutcomes.put(bib, last.get());
    } else {
      lastOutcomes.remove(bib);
    }
  }

  /**
   * @throws IllegalArgumentException if there is none
   */
  Check check(long number) {
    return find(number)
        .orElseThrow(() -> new IllegalArgumentException("there is no check " + number));
  }

  Optional<Check> find(long number) {
    return Optional.ofNullable(checks.get(number));
  }

  /** Every check, in the order opened. */
  List<Check> all() {
    return List.copyOf(checks.values());
  }

  /** The same as they stand now and later, for whoever only passes through: copies nothing. */
  Collection<Check> each() {
    return Collections.unmodifiableCollection(checks.values());
  }

  List<Check> of(String bib) {
    return numbers(bib).stream().map(this::check).toList();
  }

  /** What counts of a competitor's checks that were opened before an entry. */
  PastChecks past(String bib, long before) {
    return new PastChecks(
        of(bib).stream()
            .filter(check -> check.number() < before && check.opened().protest() == null)
            .map(counting)
            .toList());
  }

  int decided() {
    return lastOutcomes.size();
  }

  int with(Outcome outcome) {
    return (int) lastOutcomes.values().stream().filter(outcome::equals).count();
  }

  /** Those whose last check that counts is in question. */
  List<Check> inQuestion() {
    return numbersByBib.keySet().stream()
        .flatMap(bib -> past(bib, Long.MAX_VALUE).last().stream())
        .filter(Check::inQuestion)
        .toList();
  }
}
