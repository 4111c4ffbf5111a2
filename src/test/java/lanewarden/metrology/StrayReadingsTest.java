package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrayReadingsTest {
  private static final StrayReadings TEST = new StrayReadings(3.5, Percent.parse("2 %"));

  private static List<Speed> feet(String readings) {
    return Stream.of(readings.split(" ", -1))
        .map(d -> Speed.of(d, SpeedUnit.FEET_PER_SECOND))
        .toList();
  }

  private static String strays(String readings) {
    List<Speed> speeds = feet(readings);
    return String.join(
        " ",
        TEST.in(speeds).stream().map(s -> speeds.get(s.index()).value().toPlainString()).toList());
  }

  /** Common practice: 298, 390, 301 and 301 ft/s hold a misread. */
  @ParameterizedTest
  @CsvSource({
    "298 390 301 301, 390",
    "298 390 301, 390",
    "390 298 301 301 299 300, 390",
    "301 301 301 390, 390",
    "300 301 200 299, 200",
    "300 302 390 299 210 301, 390 210",
    "298 390, ''",
    "298, ''",
    "301 301 301, ''",
    "299 299 300, ''",
    "272 272 272 277, ''",
    "298 390 391 301, ''"
  })
  void findsWhatLiesFarFromTheMedian(String readings, String found) {
    assertEquals(found, strays(readings));
  }

  @Test
  void saysHowFarItLies() {
    assertEquals(
        List.of("1: 390 ft/s is 29.6 % from the median of 301.0 ft/s"),
        TEST.in(feet("298 390 301 301")).stream()
            .map(stray -> stray.index() + ": " + stray.words())
            .toList());
  }

  /**
   * commons-math3's median, and 0.6745 as the three-quarter point of its normal distribution: the
   * same readings of 2,000 series, scattered enough for the least gap to be small beside them.
   */
  @Test
  void scoreIsThatOfAGeneralStatisticsLibrary() {
    assertEquals(0.6745, new NormalDistribution().inverseCumulativeProbability(0.75), 5e-5);
    SplittableRandom random = new SplittableRandom(9);
    int found = 0;
    for (int i = 0; i < 2_000; i++) {
      double[] values =
          DoubleStream.generate(() -> 90 + 10 * Math.pow(random.nextGaussian(), 3) / 3)
              .map(v -> Math.max(v, 1))
              .limit(3 + random.nextInt(8))
              .toArray();
      double median = new Median().evaluate(values);
      double[] apart = DoubleStream.of(values).map(v -> Math.abs(v - median)).toArray();
      double mad = new Median().evaluate(apart);
      List<Integer> expected =
          IntStream.range(0, values.length)
              .filter(j -> 0.6745 * apart[j] / mad > 3.5 && apart[j] >= 0.02 * median)
              .boxed()
              .toList();
      List<Speed> speeds =
          DoubleStream.of(values)
              .mapToObj(v -> Speed.ofSi(v, SpeedUnit.METRES_PER_SECOND))
              .toList();
      assertEquals(expected, TEST.in(speeds).stream().map(StrayReadings.Stray::index).toList());
      found += expected.size();
    }
    assertTrue(found > 500, "the series hold what is looked for: " + found);
  }

  /**
   * Archers whose shots scatter by 1.5 ft/s (common practice): 2 % is four such deviations; one in
   * 500.
   */
  @Test
  void leavesGoodSeriesAlone() {
    SplittableRandom random = new SplittableRandom(10);
    for (int n = 3; n <= 8; n++) {
      int flagged = 0;
      for (int i = 0; i < 5_000; i++) {
        List<Speed> series =
            DoubleStream.generate(() -> 300 + 1.5 * random.nextGaussian())
                .limit(n)
                .mapToObj(v -> Speed.of(String.valueOf(Math.round(v)), SpeedUnit.FEET_PER_SECOND))
                .toList();
        flagged += TEST.in(series).isEmpty() ? 0 : 1;
      }
      assertTrue(flagged <= 25, flagged + " of 5000 series of " + n);
    }
  }

  @Test
  void refusesAScoreOfNothing() {
    Percent gap = Percent.parse("2 %");
    assertThrows(IllegalArgumentException.class, () -> new StrayReadings(0, gap));
  }
}
