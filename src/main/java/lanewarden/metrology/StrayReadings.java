package lanewarden.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Readings that lie far from the median of their series: a test that the odd ones cannot move, as
 * long as they are fewer than half.
 *
 * <p>The distance is counted in median absolute deviations, scaled as a standard deviation is: the
 * modified z-score of B. Iglewicz and D. C. Hoaglin (1993), which the NIST/SEMATECH e-Handbook
 * 1.3.5.17 gives with 3.5 as the most (both from memory). Three or four readings often have two
 * that are alike, and then the score of a third says nothing; so a stray reading also lies at least
 * a least gap from the median.
 *
 * @param mostScore a reading with this score or less is no stray
 * @param leastGap share of the median
 */
public record StrayReadings(double mostScore, Percent leastGap) {
  /** Of fewer readings none can be told to be far from the others. */
  public static final int FEWEST = 3;

  /** Φ⁻¹(3/4): the median absolute deviation of a normal distribution in standard deviations. */
  private static final double SCALE = 0.6745;

  /**
   * A stray reading.
   *
   * @param index counted from 0
   * @param words how far it lies from the median, for a person
   */
  public record Stray(int index, Sentence words) {}

  /**
   * @throws IllegalArgumentException if the score is none
   */
  public StrayReadings {
    Figures.requirePositive(mostScore, "the most score");
  }

  /** The stray readings of a series, in their order; none of fewer than three. */
  public List<Stray> in(List<Speed> readings) {
    List<Stray> strays = new ArrayList<>();
    if (readings.size() < FEWEST) {
      return strays;
    }
    BigDecimal twice = twiceMedian(readings.stream().map(Speed::si).toList());
    List<BigDecimal> twiceApart =
        readings.stream().map(r -> r.si().add(r.si()).subtract(twice).abs()).toList();
    double spread = twiceMedian(twiceApart).doubleValue();
    BigDecimal twiceGap = leastGap.fraction().multiply(twice);
    for (int i = 0; i < readings.size(); i++) {
      BigDecimal apart = twiceApart.get(i);
      // spread is four deviations, apart two: where the spread is zero, every gap is far
      boolean far = SCALE * 2 * apart.doubleValue() > mostScore * spread;
      if (far && apart.compareTo(twiceGap) >= 0) {
        strays.add(new Stray(i, words(readings.get(i), twice)));
      }
    }
    return strays;
  }

  private Sentence words(Speed reading, BigDecimal twiceMedian) {
    double median = twiceMedian.doubleValue() / 2;
    Speed shown = Speed.ofSi(median, SpeedUnit.METRES_PER_SECOND).to(reading.unit(), 1);
    return Sentence.of(
        Straying.FROM_MEDIAN,
        reading,
        new BigDecimal(
            String.format(
                Locale.ROOT, "%.1f", 100 * Math.abs(reading.siDouble() - median) / median)),
        shown);
  }

  /** Twice the median, so that nothing is divided. */
  private static BigDecimal twiceMedian(List<BigDecimal> values) {
    List<BigDecimal> sorted = values.stream().sorted().toList();
    int n = sorted.size();
    return sorted.get((n - 1) / 2).add(sorted.get(n / 2));
  }
}
