package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.metrology.OutlierTest.Dixon;
import lanewarden.metrology.OutlierTest.Grubbs;
import lanewarden.metrology.OutlierTest.NotTested;
import lanewarden.metrology.OutlierTest.Side;
import lanewarden.metrology.OutlierTest.Tested;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutlierTestTest {
  private static final Speed ANY_GAP = Speed.parse("0 ft/s");
  private static final Grubbs HIGH = new Grubbs(Side.HIGH, 0.05, ANY_GAP);
  private static final Grubbs LOW = new Grubbs(Side.LOW, 0.05, ANY_GAP);
  private static final Grubbs BOTH = new Grubbs(Side.BOTH, 0.05, ANY_GAP);
  private static final Dixon DIXON = new Dixon(ANY_GAP);

  static Stream<OutlierTest> tests() {
    return Stream.of(HIGH, LOW, BOTH, DIXON);
  }

  private static List<Speed> feet(String... digits) {
    return Stream.of(digits).map(d -> Speed.of(d, SpeedUnit.FEET_PER_SECOND)).toList();
  }

  private static Tested tested(OutlierTest test, List<Speed> readings) {
    return assertInstanceOf(Tested.class, test.of(readings));
  }

  /** NIST/SEMATECH e-Handbook 1.3.5.17: G 2.4687 (printed cut), one-sided 5 % critical 2.032. */
  @Test
  void handbookExample() {
    Tested found =
        tested(
            HIGH,
            feet("199.31", "199.53", "200.19", "200.82", "201.92", "201.95", "202.18", "245.57"));
    assertEquals(2.4687, found.statistic(), 1e-4);
    assertEquals(2.032, found.critical(), 5e-4);
    assertEquals(7, found.index());
    assertTrue(found.outlying());
  }

  /** Grubbs' one-sided 5 % table (F. E. Grubbs 1969). */
  @ParameterizedTest
  @CsvSource({
    "3, 1.153",
    "4, 1.463",
    "5, 1.672",
    "6, 1.822",
    "7, 1.938",
    "8, 2.032",
    "9, 2.110",
    "10, 2.176"
  })
  void criticalValuesAreTheTables(int n, double published) {
    assertEquals(published, HIGH.critical(n), 0.001);
    assertEquals(HIGH.critical(n), LOW.critical(n));
    assertTrue(BOTH.critical(n) > HIGH.critical(n));
    assertEquals(new Grubbs(Side.HIGH, 0.025, ANY_GAP).critical(n), BOTH.critical(n), 1e-12);
  }

  /** Rorabacher 1991, r10, two-sided 5 %. */
  @ParameterizedTest
  @CsvSource({
    "3, 0.970",
    "4, 0.829",
    "5, 0.710",
    "6, 0.625",
    "7, 0.568",
    "8, 0.526",
    "9, 0.493",
    "10, 0.466"
  })
  void dixonsCriticalValuesAreTheTables(int n, double published) {
    // all at 0 to n − 2 hundredths but the last, whose place makes the gap a share of the range
    double just = (n - 2) * (published + 0.001) / (1 - (published + 0.001));
    double below = (n - 2) * (published - 0.001) / (1 - (published - 0.001));
    assertTrue(tested(DIXON, ladder(n, just)).outlying());
    assertFalse(tested(DIXON, ladder(n, below)).outlying());
    assertEquals(published, tested(DIXON, ladder(n, below)).critical());
  }

  private static List<Speed> ladder(int n, double gap) {
    return DoubleStream.concat(
            IntStream.range(0, n - 1).asDoubleStream(), DoubleStream.of(n - 2 + gap))
        .mapToObj(v -> Speed.ofSi(100 + v, SpeedUnit.METRES_PER_SECOND))
        .toList();
  }

  /** Normal readings: a flag in one of twenty. 20,000 series; 4.5 standard errors are 0.007. */
  @ParameterizedTest
  @MethodSource("tests")
  void flagsOneInTwentyGoodSeries(OutlierTest test) {
    SplittableRandom random = new SplittableRandom(11);
    for (int n : new int[] {3, 4, 5, 8}) {
      int flagged = 0;
      for (int i = 0; i < 20_000; i++) {
        List<Speed> readings =
            IntStream.range(0, n)
                .mapToObj(j -> Speed.ofSi(90 + random.nextGaussian(), SpeedUnit.METRES_PER_SECOND))
                .toList();
        flagged += test.of(readings).flagged().isPresent() ? 1 : 0;
      }
      assertEquals(0.05, flagged / 20_000.0, 0.007, test + ", " + n + " readings");
    }
  }

  /** Common practice: of 298, 390, 301 and 301 ft/s the second is a misread. */
  @Test
  void misreadAmongFourIsFlagged() {
    List<Speed> readings = feet("298", "390", "301", "301");
    assertEquals(Optional.of(1), BOTH.of(readings).flagged());
    assertEquals(Optional.of(1), HIGH.of(readings).flagged());
    assertEquals(Optional.of(1), DIXON.of(readings).flagged());
    assertEquals(Optional.empty(), LOW.of(readings).flagged());
    assertEquals(
        "Dixon's test (r10) at the 5 % level: reading 2 of 4, 390 ft/s, stands out"
            + " (statistic 0.967, critical value 0.829)",
        DIXON.of(readings).words());
    assertEquals(
        "Grubbs' test at the 5 % level: reading 2 of 4, 390 ft/s, stands out"
            + " (statistic 1.499, critical value 1.481)",
        BOTH.of(readings).words());
  }

  @Test
  void slowReadingIsFlaggedToo() {
    List<Speed> readings = feet("301", "301.2", "200", "300.9");
    assertEquals(Optional.of(2), LOW.of(readings).flagged());
    assertEquals(Optional.of(2), BOTH.of(readings).flagged());
    assertEquals(Optional.of(2), DIXON.of(readings).flagged());
    assertEquals(Optional.empty(), HIGH.of(readings).flagged());
  }

  /** Own algebra: with two of three alike G is 2/√3 and r10 is 1, however near the third is. */
  @Test
  void leastGapKeepsTwoAlikeFromMakingTheThirdAnOutlier() {
    List<Speed> readings = feet("299.8", "300.1", "300.1");
    assertEquals(2 / Math.sqrt(3), tested(LOW, readings).statistic(), 1e-9);
    assertEquals(1, tested(DIXON, readings).statistic(), 1e-9);
    assertTrue(DIXON.of(readings).flagged().isPresent());
    Speed gap = Speed.parse("1 ft/s");
    assertTrue(new Dixon(gap).of(readings).flagged().isEmpty());
    assertTrue(new Grubbs(Side.LOW, 0.05, gap).of(readings).flagged().isEmpty());
    assertTrue(new Dixon(gap).of(readings).words().contains("being only 0.30 ft/s from the next"));
    assertTrue(new Dixon(gap).of(feet("299.1", "300.1", "300.1")).flagged().isPresent());
  }

  @ParameterizedTest
  @MethodSource("tests")
  void saysWhyItWasNotMade(OutlierTest test) {
    assertInstanceOf(NotTested.class, test.of(List.of()));
    NotTested two = assertInstanceOf(NotTested.class, test.of(feet("299", "286")));
    assertTrue(two.words().endsWith("and there are 2"), two.words());
    NotTested equal = assertInstanceOf(NotTested.class, test.of(feet("300", "300.0", "300")));
    assertTrue(equal.words().endsWith("not made, all readings are equal"), equal.words());
    assertEquals(Optional.empty(), equal.flagged());
  }

  @Test
  void dixonEndsWhereItsTableDoes() {
    assertInstanceOf(Tested.class, DIXON.of(ladder(10, 1)));
    assertInstanceOf(NotTested.class, DIXON.of(ladder(11, 1)));
    assertInstanceOf(Tested.class, BOTH.of(ladder(30, 1)));
  }

  @ParameterizedTest
  @MethodSource("tests")
  void unitAndOrderDoNotMatter(OutlierTest test) {
    Tested feet = tested(test, feet("298", "390", "301", "302"));
    Tested turned = tested(test, feet("302", "301", "390", "298"));
    Tested metres =
        tested(
            test,
            feet("298", "390", "301", "302").stream()
                .map(s -> Speed.of(s.si(), SpeedUnit.METRES_PER_SECOND))
                .toList());
    assertEquals(feet.statistic(), turned.statistic(), 1e-9);
    assertEquals(feet.statistic(), metres.statistic(), 1e-9);
    assertEquals(feet.index(), 3 - turned.index());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -1, Double.NaN})
  void refusesLevelsThatAreNone(double level) {
    assertThrows(IllegalArgumentException.class, () -> new Grubbs(Side.BOTH, level, ANY_GAP));
  }

  @Test
  void refusesCriticalValuesOfTwo() {
    assertThrows(IllegalArgumentException.class, () -> BOTH.critical(2));
  }
}
