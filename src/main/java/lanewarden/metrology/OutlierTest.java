package lanewarden.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Whether one of an archer's readings stands out from the others. It flags and never drops: an
 * official decides.
 *
 * <p>With three readings, two of them alike, every such test flags the third however near it is, so
 * a reading must also lie away from its nearest neighbour by a least gap; give the instrument's
 * expanded uncertainty at least.
 */
public sealed interface OutlierTest permits OutlierTest.Grubbs, OutlierTest.Dixon {

  /** Of fewer readings none can be told to stand out. */
  int FEWEST = 3;

  /** What the readings say, at most about one of them: the farthest from the others. */
  Finding of(List<Speed> readings);

  /** The test, its level and its least gap. */
  Sentence sentence();

  /** The same in English, in a sentence. */
  default String inWords() {
    return sentence().toString();
  }

  /** The tests by name. */
  enum Name implements Sentence.Form {
    /** Its level in percent, and the least gap. */
    GRUBBS("Grubbs' test at the {0} % level, and by at least {1}"),
    /** The least gap. */
    DIXON("Dixon's test (r10) at the 5 % level, and by at least {0}");

    private final String english;

    Name(String english) {
      this.english = english;
    }

    @Override
    public String english() {
      return english;
    }
  }

  /** Which readings are looked at. */
  enum Side {
    /** Only one that is too fast. */
    HIGH,
    /** Only one that is too slow. */
    LOW,
    /** Either. */
    BOTH
  }

  /** The outcome of a test. */
  sealed interface Finding {
    /** The test, its level and what it says, for a person. */
    String words();

    /** Which reading is flagged, counted from 0. */
    default Optional<Integer> flagged() {
      return Optional.empty();
    }
  }

  /** There are too few or too many readings, or all are equal. */
  record NotTested(String words) implements Finding {}

  /**
   * The test was made.
   *
   * @param index the reading farthest from the others, counted from 0
   * @param statistic of that reading
   * @param critical the largest statistic that is not flagged
   * @param level probability of a flag where all readings are of one normal distribution
   * @param outlying whether the statistic is more than the critical value, and the gap large enough
   */
  record Tested(
      int index, double statistic, double critical, double level, boolean outlying, String words)
      implements Finding {
    @Override
    public Optional<Integer> flagged() {
      return outlying ? Optional.of(index) : Optional.empty();
    }
  }

  /**
   * Grubbs' test: the distance from the mean in standard deviations (F. E. Grubbs 1969, as the
   * NIST/SEMATECH e-Handbook 1.3.5.17.1 gives it).
   *
   * @param side which readings are looked at
   * @param level more than 0 and less than 1, as 0.05
   * @param leastGap to the nearest other reading
   */
  record Grubbs(Side side, double level, Speed leastGap) implements OutlierTest {
    /**
     * @throws IllegalArgumentException if the level is none
     */
    public Grubbs {
      if (!(level > 0 && level < 1)) {
        throw new IllegalArgumentException("a level must lie between 0 and 1, not " + level);
      }
    }

    /**
     * (n − 1)/√n · √(t²/(n − 2 + t²)) with t exceeded with probability level/n on n − 2 degrees of
     * freedom, or half of that where both sides are looked at.
     *
     * @param n readings, three or more
     */
    public double critical(int n) {
      Figures.requireAtLeast(FEWEST, n, "the readings of Grubbs' test");
      double t = Student.exceeded(level / (side == Side.BOTH ? 2 * n : n), n - 2);
      return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    @Override
    public Sentence sentence() {
      return Sentence.of(Name.GRUBBS, percent(), leastGap);
    }

    private BigDecimal percent() {
      BigDecimal percent = BigDecimal.valueOf(level).movePointRight(2).stripTrailingZeros();
      return percent.setScale(Math.max(0, percent.scale()));
    }

    private String name() {
      return "Grubbs' test at the " + percent() + " % level";
    }

    @Override
    public Finding of(List<Speed> readings) {
      String name = name();
      Optional<Finding> none = untested(name, readings, Integer.MAX_VALUE);
      if (none.isPresent()) {
        return none.get();
      }
      Spread spread = Spread.of(readings);
      List<Integer> order = sorted(readings);
      int last = order.size() - 1;
      double high = (readings.get(order.get(last)).siDouble() - spread.mean()) / spread.deviation();
      double low = (spread.mean() - readings.get(order.get(0)).siDouble()) / spread.deviation();
      boolean atTop = side == Side.HIGH || (side == Side.BOTH && high >= low);
      return tested(
          name,
          readings,
          order,
          atTop,
          atTop ? high : low,
          critical(readings.size()),
          level,
          leastGap);
    }
  }

  /**
   * Dixon's r10 on both sides at the 5 % level: the gap to the nearest reading as a share of the
   * range; critical values from D. B. Rorabacher, Anal. Chem. 63 (1991) 139.
   *
   * @param leastGap to the nearest other reading
   */
  record Dixon(Speed leastGap) implements OutlierTest {
    private static final double LEVEL = 0.05;
    private static final double[] CRITICAL = {
      0.970, 0.829, 0.710, 0.625, 0.568, 0.526, 0.493, 0.466
    };

    /** The most readings that r10 is tabulated for here. */
    public static final int MOST = 2 + CRITICAL.length;

    private static final String NAME = "Dixon's test (r10) at the 5 % level";

    @Override
    public Sentence sentence() {
      return Sentence.of(Name.DIXON, leastGap);
    }

    @Override
    public Finding of(List<Speed> readings) {
      Optional<Finding> none = untested(NAME, readings, MOST);
      if (none.isPresent()) {
        return none.get();
      }
      List<Integer> order = sorted(readings);
      int last = order.size() - 1;
      double high = gap(readings, order, true).doubleValue();
      double low = gap(readings, order, false).doubleValue();
      double range =
          readings
              .get(order.get(last))
              .si()
              .subtract(readings.get(order.get(0)).si())
              .doubleValue();
      boolean atTop = high >= low;
      return tested(
          NAME,
          readings,
          order,
          atTop,
          Math.max(high, low) / range,
          CRITICAL[order.size() - 3],
          LEVEL,
          leastGap);
    }
  }

  private static Optional<Finding> untested(String name, List<Speed> readings, int most) {
    int n = readings.size();
    if (n < FEWEST || n > most) {
      return Optional.of(
          new NotTested(
              name
                  + ": not made, it needs "
                  + (most == Integer.MAX_VALUE
                      ? "3 readings or more"
                      : "3 to " + most + " readings")
                  + " and there are "
                  + n));
    }
    if (readings.stream().allMatch(r -> r.compareTo(readings.get(0)) == 0)) {
      return Optional.of(new NotTested(name + ": not made, all readings are equal"));
    }
    return Optional.empty();
  }

  /** Indexes from the slowest to the fastest, exactly. */
  private static List<Integer> sorted(List<Speed> readings) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, readings.size()).boxed().toList());
    order.sort(Comparator.comparing(readings::get));
    return order;
  }

  /** From the fastest or the slowest reading to its neighbour, m/s, exact. */
  private static BigDecimal gap(List<Speed> readings, List<Integer> order, boolean atTop) {
    int last = order.size() - 1;
    int end = order.get(atTop ? last : 0);
    int next = order.get(atTop ? last - 1 : 1);
    return readings.get(end).si().subtract(readings.get(next).si()).abs();
  }

  private static Finding tested(
      String name,
      List<Speed> readings,
      List<Integer> order,
      boolean atTop,
      double statistic,
      double critical,
      double level,
      Speed leastGap) {
    int index = order.get(atTop ? order.size() - 1 : 0);
    Speed reading = readings.get(index);
    BigDecimal gap = gap(readings, order, atTop);
    boolean large = gap.compareTo(leastGap.si()) >= 0;
    boolean outlying = statistic > critical && large;
    String verdict =
        outlying
            ? "stands out"
            : statistic > critical
                ? "does not count as standing out, being only "
                    + Speed.of(gap, SpeedUnit.METRES_PER_SECOND).to(reading.unit(), 2)
                    + " from the next"
                : "does not stand out";
    String words =
        String.format(
            Locale.ROOT,
            "%s: reading %d of %d, %s, %s (statistic %.3f, critical value %.3f)",
            name,
            index + 1,
            readings.size(),
            reading,
            verdict,
            statistic,
            critical);
    return new Tested(index, statistic, critical, level, outlying, words);
  }
}
