package lanewarden.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanewarden.rules.RuleBook;

/**
 * The set-ups of a practice day beside each other: what each showed, whether one is really faster
 * than another, and what stays to the limits of a rule book. For display only: no verdict rests on
 * it.
 *
 * @param practice what was shot
 * @param showings from the fastest to the slowest mean; those of which no shot counts last
 * @param pairs every pair of set-ups with a mean, the widest apart first
 * @param margins of every set-up to every division, in the order of set-ups, then divisions
 * @param masses of the bows that shot two arrow masses or more
 */
public record Comparison(
    Practice practice,
    List<Showing> showings,
    List<PairDifference> pairs,
    List<LimitMargin> margins,
    List<BowMass> masses) {

  /** How often an interval holds, and all those of the differences at once. */
  public static final double CONFIDENCE = 0.95;

  /**
   * Compares the set-ups of a practice day.
   *
   * @param rules whose limits are looked at, if any
   */
  public static Comparison of(Practice practice, Optional<RuleBook> rules) {
    List<Showing> showings =
        practice.series().stream()
            .map(Showing::of)
            .sorted(
                Comparator.comparingDouble(
                    (Showing showing) -> -showing.mean().orElse(Double.NEGATIVE_INFINITY)))
            .toList();
    return new Comparison(
        practice,
        showings,
        pairs(showings.stream().filter(Showing::hasMean).toList()),
        rules.stream()
            .flatMap(book -> showings.stream().flatMap(s -> margins(book, s).stream()))
            .toList(),
        showings.stream()
            .map(showing -> showing.series().bow())
            .distinct()
            .flatMap(bow -> BowMass.of(bow, showings).stream())
            .toList());
  }

  private static List<PairDifference> pairs(List<Showing> showings) {
    int count = showings.size() * (showings.size() - 1) / 2;
    List<PairDifference> pairs = new ArrayList<>();
    for (int i = 0; i < showings.size(); i++) {
      for (int j = i + 1; j < showings.size(); j++) {
        pairs.add(PairDifference.of(showings.get(i), showings.get(j), count));
      }
    }
    pairs.sort(Comparator.comparingDouble(pair -> -pair.difference()));
    return List.copyOf(pairs);
  }

  private static List<LimitMargin> margins(RuleBook book, Showing showing) {
    return book.divisions().stream().map(division -> LimitMargin.of(division, showing)).toList();
  }

  /**
   * The place of a set-up: one more than the set-ups that are really faster. Those that noise does
   * not tell apart share a place; empty where too few shots count.
   */
  public Optional<Integer> place(Showing showing) {
    if (!showing.hasInterval()) {
      return Optional.empty();
    }
    long faster =
        pairs.stream()
            .filter(pair -> pair.other().equals(showing))
            .filter(pair -> pair.sense() == PairDifference.Sense.REAL)
            .count();
    return Optional.of((int) faster + 1);
  }

  /** How many shots were left out. */
  public int leftOut() {
    return showings.stream().mapToInt(showing -> showing.leftOut().size()).sum();
  }
}
