package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextFigureTest {
  private static final double KNOWN = Double.POSITIVE_INFINITY;

  private static double quantile(Belief belief, double probability) {
    return Mixture.least(belief::chanceUpTo, probability, -1000, 1000);
  }

  /**
   * C. W. Dunnett, JASA 50 (1955), one-sided 5 % points of the greatest of k differences to a
   * control, from memory: of k further readings and one that was taken it is √2 times that.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 1, 2.02",
    "5, 2, 2.44",
    "5, 3, 2.68",
    "5, 4, 2.85",
    "5, 5, 2.98", //
    "10, 1, 1.81",
    "10, 2, 2.15",
    "10, 3, 2.34",
    "10, 4, 2.47",
    "10, 5, 2.56", //
    "20, 1, 1.72",
    "20, 2, 2.03",
    "20, 3, 2.19",
    "20, 4, 2.30",
    "20, 5, 2.39", //
    "Infinity, 1, 1.64",
    "Infinity, 2, 1.92",
    "Infinity, 3, 2.06",
    "Infinity, 4, 2.16", //
    "Infinity, 5, 2.23"
  })
  void highestOfFurtherReadingsIsBoundedAsDunnettTabled(double degrees, int k, double published) {
    Belief belief = new NextFigure(0, 1, degrees, 1, 0, DecidingFigure.highest(k)).believed();
    assertEquals(published, quantile(belief, 0.95) / Math.sqrt(2), 0.006);
  }

  /** Student's t of a further mean: m + s√(1/n + 1/k)·t, by commons-math3. */
  @ParameterizedTest
  @CsvSource({"2, 3, 3", "2, 3, 1", "5, 6, 6", "14, 15, 2", "1, 2, 3", "98, 99, 99"})
  void meanOfFurtherReadingsIsStudents(double degrees, int taken, int further) {
    Belief belief =
        new NextFigure(90, 0.4, degrees, taken, 0, DecidingFigure.mean(further)).believed();
    TDistribution student = new TDistribution(degrees);
    double reach = 0.4 * Math.sqrt(1.0 / taken + 1.0 / further);
    for (double t = -12; t <= 12; t += 0.37) {
      assertEquals(student.cumulativeProbability(t), belief.chanceUpTo(90 + reach * t), 5e-5);
    }
  }

  /** What is shared adds in quadrature where the scatter is known. */
  @ParameterizedTest
  @CsvSource({"0.01", "0.3", "1", "5", "40", "400"})
  void whatIsSharedAddsToAKnownScatter(double shared) {
    Belief belief = new NextFigure(0, 1, KNOWN, 4, shared, DecidingFigure.mean(4)).believed();
    NormalDistribution normal = new NormalDistribution(0, Math.sqrt(0.5 + shared * shared));
    for (double z = -3; z <= 3; z += 0.21) {
      double bound = z * normal.getStandardDeviation();
      assertEquals(normal.cumulativeProbability(bound), belief.chanceUpTo(bound), 2e-3);
    }
  }

  /** Drawn two hundred thousand times: scatter, true speed, what is shared, further readings. */
  @ParameterizedTest
  @CsvSource({
    "highest, 3, 2, 3, 0.1",
    "highest, 6, 5, 6, 0.5",
    "second, 3, 2, 3, 0.1",
    "slowest, 2, Infinity, 1, 0.3",
    "pair, 4, 3, 4, 0.2",
    "pair, 6, 2, 3, 1",
    "mean, 3, 2, 3, 0.7"
  })
  void chancesAreThoseOfASimulation(
      String kind, int further, double degrees, int taken, double shared) {
    double scatter = 0.6;
    double[] drawn = drawn(kind, further, degrees, taken, shared, scatter);
    Belief belief =
        new NextFigure(85, scatter, degrees, taken, shared, figure(kind, further)).believed();
    for (double probability : new double[] {0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99}) {
      double bound = 85 + drawn[(int) (probability * drawn.length)];
      double error = Math.sqrt(probability * (1 - probability) / drawn.length);
      assertEquals(probability, belief.chanceUpTo(bound), 4 * error + 5e-4, "at " + bound);
    }
  }

  private static DecidingFigure figure(String kind, int readings) {
    return switch (kind) {
      case "highest" -> DecidingFigure.highest(readings);
      case "slowest" -> DecidingFigure.firstWithin(readings);
      case "second" -> DecidingFigure.withinCount(2, readings);
      case "pair" -> DecidingFigure.median(readings);
      default -> DecidingFigure.mean(readings);
    };
  }

  private static double[] drawn(
      String kind, int further, double degrees, int taken, double shared, double scatter) {
    Random random = new Random(17);
    double[] figures = new double[200_000];
    for (int i = 0; i < figures.length; i++) {
      double square = 0;
      for (int j = 0; j < (Double.isInfinite(degrees) ? 0 : degrees); j++) {
        square += Math.pow(random.nextGaussian(), 2);
      }
      double one = Double.isInfinite(degrees) ? scatter : scatter * Math.sqrt(degrees / square);
      double speed =
          one / Math.sqrt(taken) * random.nextGaussian() + shared * random.nextGaussian();
      double[] readings = new double[further];
      for (int j = 0; j < further; j++) {
        readings[j] = speed + one * random.nextGaussian();
      }
      Arrays.sort(readings);
      figures[i] =
          switch (kind) {
            case "highest" -> readings[further - 1];
            case "slowest" -> readings[0];
            case "second" -> readings[1];
            case "pair" -> (readings[further / 2 - 1] + readings[further / 2]) / 2;
            default -> Arrays.stream(readings).average().orElseThrow();
          };
    }
    Arrays.sort(figures);
    return figures;
  }

  @Test
  void chancesRiseFromNothingToAll() {
    Belief belief = new NextFigure(0, 1, 2, 3, 0.5, DecidingFigure.median(4)).believed();
    double before = 0;
    for (double bound = -1e4; bound <= 1e4; bound += 7) {
      double chance = belief.chanceUpTo(bound);
      assertTrue(chance >= before - 1e-9 && chance <= 1 + 1e-9, bound + ": " + chance);
      before = chance;
    }
    assertTrue(belief.chanceUpTo(-1e4) < 1e-4 && before > 1 - 1e-4);
  }

  @Test
  void figuresThatMakeNoSenseAreRefused() {
    DecidingFigure one = DecidingFigure.mean(1);
    assertThrows(IllegalArgumentException.class, () -> new NextFigure(0, 0, 2, 3, 0, one));
    assertThrows(IllegalArgumentException.class, () -> new NextFigure(0, 1, 0, 3, 0, one));
    assertThrows(IllegalArgumentException.class, () -> new NextFigure(0, 1, 2, 0, 0, one));
    assertThrows(IllegalArgumentException.class, () -> new NextFigure(0, 1, 2, 3, -1, one));
  }
}
