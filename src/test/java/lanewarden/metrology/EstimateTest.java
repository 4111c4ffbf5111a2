package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An estimate and a mixture of estimates. */
class EstimateTest {

  /** GUM table G.2 (JCGM 100:2008), column 95.45 %. */
  @ParameterizedTest
  @CsvSource({"1, 13.97", "2, 4.53", "3, 3.31", "5, 2.65", "10, 2.28", "20, 2.13"})
  void reachesAsFarAsTheTableOfTheGum(double degrees, double factor) {
    Interval interval = new Estimate(300, 2, degrees).interval(0.9545);
    assertEquals(300 + 2 * factor, interval.high(), 0.01);
    assertEquals(300 - 2 * factor, interval.low(), 0.01);
  }

  /** Against the t distribution of Apache Commons Math. */
  @ParameterizedTest
  @CsvSource({"296, 1", "300, 2.5", "302.2, 4", "305, 16", "280, 30"})
  void hasTheChancesOfTheLibrary(double bound, double degrees) {
    double library = new TDistribution(degrees).cumulativeProbability((bound - 300) / 2);
    assertEquals(library, new Estimate(300, 2, degrees).chanceUpTo(bound), 1e-9);
  }

  @Test
  void anExactFigureIsEitherBelowOrNot() {
    assertEquals(1, new Estimate(300, 0).chanceUpTo(300));
    assertEquals(0, new Estimate(300, 0).chanceUpTo(299.9));
    assertEquals(0, new Estimate(300, 0).interval(0.95).width());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.05, 0.3, 0.5, 0.9, 0.95, 0.999})
  void aMixtureOfOneIsThatOne(double probability) {
    Estimate one = new Estimate(300, 2, 4);
    Mixture mixture = Mixture.of(one);
    assertEquals(probability, one.chanceUpTo(mixture.quantile(probability)), 1e-9);
    assertEquals(one.interval(0.9).high(), mixture.interval(0.9).high(), 1e-6);
  }

  /** Own arithmetic: of two exact figures of weights 0.3 and 0.7. */
  @Test
  void aMixtureWeighsItsParts() {
    Mixture mixture =
        new Mixture(
            List.of(
                new Mixture.Part(0.3, new Estimate(10, 0)),
                new Mixture.Part(0.7, new Estimate(20, 0))));
    assertEquals(17, mixture.mean(), 1e-12);
    assertEquals(0.3, mixture.chanceUpTo(15), 1e-12);
    assertEquals(10, mixture.quantile(0.25), 1e-9);
    assertEquals(20, mixture.quantile(0.5), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.7, 0.9, 0.95, 0.98})
  void moreConfidenceReachesFarther(double confidence) {
    Mixture mixture =
        new Mixture(
            List.of(
                new Mixture.Part(0.5, new Estimate(10, 1, 2)),
                new Mixture.Part(0.5, new Estimate(12, 2))));
    assertTrue(mixture.interval(confidence).width() < mixture.interval(confidence + 0.01).width());
  }

  @Test
  void refusesWeightsThatAreNoProbabilities() {
    List<Mixture.Part> parts = List.of(new Mixture.Part(0.5, new Estimate(10, 0)));
    assertThrows(IllegalArgumentException.class, () -> new Mixture(parts));
  }
}
