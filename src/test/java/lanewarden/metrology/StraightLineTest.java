package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import lanewarden.metrology.StraightLine.Point;
import org.apache.commons.math3.stat.regression.GLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Of the certified sets of NIST StRD, linear regression, one is a straight line (Norris) and two
 * are lines through the origin; Pontius is a parabola, to which no straight line applies.
 */
class StraightLineTest {

  /** NIST StRD, Norris.dat: y, x, as the tests of Apache Commons Math reproduce the file. */
  private static final double[] NORRIS = {
    0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3,
    998.5, 996.3, 449.1, 448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5, 668.8,
    666.9, 339.3, 338.0, 448.9, 447.5, 10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8, 888.8,
    887.6, 119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6, 556.8, 339.3, 339.1, 888.0, 887.2, 998.5, 999.0,
    778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2, 668.4, 669.1, 449.2, 448.9, 0.2, 0.5
  };

  /** NIST StRD, Norris.dat, certified values, as the same tests reproduce them. */
  @Test
  void norrisHasItsCertifiedLine() {
    StraightLine line = StraightLine.through(norris());
    assertEquals(1.00211681802045, line.slope(), 1e-13);
    assertEquals(-0.262323073774029, line.intercept(), 1e-11);
    assertEquals(26.6173985294224, line.squares(), 1e-9);
    assertEquals(34, line.degrees());
    assertEquals(0.884796396144373, line.deviation(), 1e-12);
    StraightLine scattered = line.fromScatter();
    assertEquals(0.429796848199937E-03, scattered.slopeStandard(), 1e-14);
    assertEquals(0.232818234301152, scattered.interceptStandard(), 1e-12);
  }

  /**
   * NIST StRD, NoInt1.dat, certified values: a line through the origin. With every point mirrored
   * at the origin the line with an intercept is the same one, and its squares and degrees are twice
   * as many; so the deviation is the certified one, and the slope's uncertainty less by √2.
   */
  @Test
  void noInt1MirroredHasItsCertifiedSlope() {
    List<Point> points = new ArrayList<>();
    IntStream.rangeClosed(60, 70)
        .forEach(
            x -> {
              points.add(new Point(x, x + 70, 1));
              points.add(new Point(-x, -x - 70, 1));
            });
    StraightLine line = StraightLine.through(points);
    assertEquals(2.07438016528926, line.slope(), 1e-13);
    assertEquals(0, line.intercept(), 1e-11);
    assertEquals(3.56753034006338, line.deviation(), 1e-12);
    assertEquals(0.165289256198347E-01, line.fromScatter().slopeStandard() * Math.sqrt(2), 1e-13);
  }

  /** A textbook example whose interval the tests of Apache Commons Math verified against R. */
  @Test
  void slopeHasTheIntervalThatRGives() {
    double[] yx = {
      15.6, 5.2, 26.8, 6.1, 37.8, 8.7, 36.4, 8.5, 35.5, 8.8, 18.6, 4.9, 15.3, 4.5, 7.9, 2.5, 0.0,
      1.1
    };
    List<Point> points =
        IntStream.range(0, yx.length / 2)
            .mapToObj(i -> new Point(yx[2 * i], yx[2 * i + 1], 1))
            .toList();
    Interval interval = StraightLine.through(points).slopeInterval(0.95);
    assertEquals(0.0270713794287, interval.width() / 2, 1e-8);
  }

  /** Against SimpleRegression of Apache Commons Math. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void agreesWithTheLibraryWherePointsWeighAlike(long seed) {
    Random random = new Random(seed);
    SimpleRegression library = new SimpleRegression();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 3 + 4 * seed; i++) {
      double height = 5 * random.nextGaussian();
      library.addData(300 + 7.0 * i, height);
      points.add(new Point(300 + 7.0 * i, height, 3));
    }
    StraightLine line = StraightLine.through(points);
    assertEquals(library.getSlope(), line.slope(), 1e-11);
    assertEquals(library.getIntercept(), line.intercept(), 1e-9);
    assertEquals(library.getSlopeStdErr(), line.fromScatter().slopeStandard(), 1e-11);
    assertEquals(library.getInterceptStdErr(), line.fromScatter().interceptStandard(), 1e-9);
    assertEquals(library.predict(365), line.at(365), 1e-10);
    assertEquals(
        library.getSlopeConfidenceInterval(0.1), line.slopeInterval(0.9).width() / 2, 1e-9);
  }

  /** Against GLSMultipleLinearRegression of Apache Commons Math, the weights as its covariance. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void agreesWithTheLibraryWherePointsWeighUnlike(long seed) {
    Random random = new Random(seed);
    int n = (int) (2 + seed);
    double[] y = random.doubles(n, -50, 50).toArray();
    double[] standard = random.doubles(n, 0.1, 5).toArray();
    double[][] x = new double[n][1];
    double[][] covariance = new double[n][n];
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      x[i][0] = i;
      covariance[i][i] = standard[i] * standard[i];
      points.add(new Point(i, y[i], standard[i]));
    }
    GLSMultipleLinearRegression library = new GLSMultipleLinearRegression();
    library.newSampleData(y, x, covariance);
    double[] found = library.estimateRegressionParameters();
    double[][] variances = library.estimateRegressionParametersVariance();
    StraightLine line = StraightLine.through(points);
    assertEquals(found[0], line.intercept(), 1e-9);
    assertEquals(found[1], line.slope(), 1e-9);
    assertEquals(Math.sqrt(variances[0][0]), line.interceptStandard(), 1e-9);
    assertEquals(Math.sqrt(variances[1][1]), line.slopeStandard(), 1e-9);
  }

  /** Own algebra: y = 2 + x/10 meets zero at −20; the fit's height there, over the slope. */
  @Test
  void zeroIsAsUncertainAsTheHeightThere() {
    StraightLine line = StraightLine.through(List.of(new Point(0, 2, 0.1), new Point(10, 3, 0.1)));
    assertEquals(-20, line.zero().value(), 1e-9);
    assertEquals(line.standardAt(-20) / 0.1, line.zero().standard(), 1e-9);
  }

  @Test
  void twoPointsHaveNoScatter() {
    StraightLine line = StraightLine.through(List.of(new Point(0, 2, 1), new Point(1, 3, 1)));
    assertThrows(IllegalStateException.class, line::fromScatter);
  }

  @Test
  void refusesPointsAtOnePlace() {
    List<Point> points = List.of(new Point(350, 1, 1), new Point(350, 2, 1));
    assertThrows(IllegalArgumentException.class, () -> StraightLine.through(points));
  }

  private static List<Point> norris() {
    return IntStream.range(0, NORRIS.length / 2)
        .mapToObj(i -> new Point(NORRIS[2 * i + 1], NORRIS[2 * i], 1))
        .toList();
  }
}
