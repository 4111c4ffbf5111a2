package lanewarden.station;

import java.util.List;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Division;

/**
 * What two rules beside each other do not both demand.
 *
 * @param onlyFirst what only the first demands, in its order
 * @param onlySecond what only the second demands, in its order
 */
public record Difference(List<Sentence> onlyFirst, List<Sentence> onlySecond) {
  /** Copies the lists. */
  public Difference {
    onlyFirst = List.copyOf(onlyFirst);
    onlySecond = List.copyOf(onlySecond);
  }

  /** The difference between two divisions, by what their rules demand in words. */
  public static Difference between(Division first, Division second) {
    return new Difference(onlyIn(first, second), onlyIn(second, first));
  }

  private static List<Sentence> onlyIn(Division one, Division other) {
    List<Sentence> others = other.sentences();
    return one.sentences().stream().filter(each -> !others.contains(each)).toList();
  }

  /** Whether both demand the same. */
  public boolean isNone() {
    return onlyFirst.isEmpty() && onlySecond.isEmpty();
  }
}
