package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SamplePlanTest {

  static Stream<SamplePlan> plans() {
    Random random = new Random(3);
    return Stream.generate(
            () -> {
              int competitors = 1 + random.nextInt(400);
              double caught = random.nextBoolean() ? 1 : 0.05 + 0.95 * random.nextDouble();
              return new SamplePlan(
                  competitors, random.nextInt(Math.min(competitors, 20) + 1), caught);
            })
        .limit(200);
  }

  /** commons-math3's hypergeometric and binomial distributions as the second opinion. */
  @ParameterizedTest
  @MethodSource("plans")
  void agreesWithAnotherLibrary(SamplePlan plan) {
    for (int checked = 1; checked <= plan.competitors(); checked += 7) {
      HypergeometricDistribution drawn =
          new HypergeometricDistribution(null, plan.competitors(), plan.overLimit(), checked);
      double one = 0;
      for (int in = 1; in <= Math.min(checked, plan.overLimit()); in++) {
        one +=
            drawn.probability(in)
                * (1 - new BinomialDistribution(null, in, plan.caught()).probability(0));
      }
      assertEquals(one, plan.catchesOne(checked), 1e-9, checked + " checked");
      if (plan.caught() == 1) {
        assertEquals(drawn.upperCumulativeProbability(1), plan.catchesOne(checked), 1e-9);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void smallestSampleIsEnoughAndOneLessIsNot(SamplePlan plan) {
    for (double wanted : new double[] {0.1, 0.5, 0.9, 0.99}) {
      OptionalInt smallest = plan.smallestFor(wanted);
      if (smallest.isEmpty()) {
        assertTrue(plan.catchesOne(plan.competitors()) < wanted);
      } else {
        assertTrue(plan.catchesOne(smallest.getAsInt()) >= wanted - 1e-9);
        assertTrue(plan.catchesOne(smallest.getAsInt() - 1) < wanted);
      }
    }
  }

  /** Own arithmetic: one black sheep of ten is among five drawn in half the draws. */
  @ParameterizedTest
  @CsvSource({"10, 1, 1, 5, 0.5", "10, 1, 0.5, 5, 0.25", "10, 0, 1, 10, 0", "4, 2, 1, 3, 1"})
  void smallCasesAreAsByHand(int all, int over, double caught, int checked, double probability) {
    assertEquals(probability, new SamplePlan(all, over, caught).catchesOne(checked), 1e-12);
  }

  @Test
  void exactShareNeedsNoOneMore() {
    assertEquals(OptionalInt.of(5), new SamplePlan(10, 1, 1).smallestFor(0.5));
    assertEquals(OptionalInt.of(10), new SamplePlan(10, 1, 1).smallestFor(1));
    assertEquals(OptionalInt.empty(), new SamplePlan(10, 1, 0.5).smallestFor(0.6));
    assertEquals(OptionalInt.empty(), new SamplePlan(10, 0, 1).smallestFor(0.01));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.1, Double.NaN})
  void refusesProbabilitiesThatAreNone(double probability) {
    assertThrows(IllegalArgumentException.class, () -> new SamplePlan(10, 1, probability));
    SamplePlan plan = new SamplePlan(10, 1, 1);
    assertThrows(IllegalArgumentException.class, () -> plan.smallestFor(probability));
  }

  @Test
  void refusesMoreThanThereAre() {
    assertThrows(IllegalArgumentException.class, () -> new SamplePlan(0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new SamplePlan(10, 11, 1));
    assertThrows(IllegalArgumentException.class, () -> new SamplePlan(10, -1, 1));
    SamplePlan plan = new SamplePlan(10, 1, 1);
    assertThrows(IllegalArgumentException.class, () -> plan.catchesOne(11));
    assertThrows(IllegalArgumentException.class, () -> plan.catchesOne(-1));
  }
}
