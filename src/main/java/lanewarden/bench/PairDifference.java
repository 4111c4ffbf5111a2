package lanewarden.bench;

import java.util.Optional;
import lanewarden.metrology.Interval;
import lanewarden.metrology.MeanDifference;

/**
 * How one set-up compares with another.
 *
 * @param one not the slower by its mean
 * @param other the one it is held against
 * @param difference of the means, m/s, zero or more
 * @param interval from where to where the true difference lies, m/s; empty where a set-up has fewer
 *     than two shots
 */
public record PairDifference(
    Showing one, Showing other, double difference, Optional<Interval> interval) {

  /** What can be said of a difference. */
  public enum Sense {
    /** Its interval leaves zero out. */
    REAL("real"),
    /** Its interval holds zero. */
    NOISE("within noise"),
    /** Too few shots say nothing. */
    UNKNOWN("not known: too few shots");

    private final String words;

    Sense(String words) {
      this.words = words;
    }

    /** For a person. */
    public String inWords() {
      return words;
    }
  }

  /**
   * @param pairs how many there are in all
   */
  static PairDifference of(Showing one, Showing other, int pairs) {
    double apart = one.sample().spread().mean() - other.sample().spread().mean();
    return new PairDifference(
        one,
        other,
        apart,
        one.hasInterval() && other.hasInterval()
            ? Optional.of(
                new MeanDifference(one.sample(), other.sample())
                    .interval(Comparison.CONFIDENCE, pairs))
            : Optional.empty());
  }

  /** What can be said of it. */
  public Sense sense() {
    return interval.map(i -> i.holds(0) ? Sense.NOISE : Sense.REAL).orElse(Sense.UNKNOWN);
  }

  /** Whether it is of these two, in whichever order. */
  public boolean isOf(Showing first, Showing second) {
    return (one.equals(first) && other.equals(second))
        || (one.equals(second) && other.equals(first));
  }

  /**
   * How much faster one of the two is, m/s; less than zero for the slower.
   *
   * @param showing one of the two
   */
  public double differenceOf(Showing showing) {
    return showing.equals(one) ? difference : -difference;
  }

  /**
   * From where to where that lies, m/s.
   *
   * @param showing one of the two
   */
  public Optional<Interval> intervalOf(Showing showing) {
    return showing.equals(one) ? interval : interval.map(i -> new Interval(-i.high(), -i.low()));
  }

  /**
   * What can be said of it, for a person who looks at one of the two.
   *
   * @param showing one of the two
   */
  public String wordsOf(Showing showing) {
    if (sense() != Sense.REAL) {
      return sense().inWords();
    }
    return showing.equals(one) ? "really faster" : "really slower";
  }
}
