package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import lanewarden.metrology.UncertaintyBudget.Evaluation;
import lanewarden.metrology.UncertaintyBudget.Influence;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UncertaintyBudgetTest {
  private static final double KNOWN = Double.POSITIVE_INFINITY;

  private static Influence influence(double standard, double degrees) {
    return new Influence("one", standard, degrees, Evaluation.TYPE_B, "for a test");
  }

  private static UncertaintyBudget budget(Influence... influences) {
    return UncertaintyBudget.of(List.of(influences));
  }

  /**
   * GUM H.1, end gauge, in nm: u_c 32, ν_eff 16, t99 2.92, U99 93. The standard multiplies the
   * rounded 2.92 and 32; unrounded it is 92.5.
   */
  @Test
  void endGaugeOfTheGum() {
    UncertaintyBudget budget =
        budget(influence(25, 18), influence(9.7, 25.6), influence(2.9, 50), influence(16.6, 2));
    assertEquals(32, budget.combined(), 0.5);
    assertEquals(16, budget.wholeDegrees());
    assertEquals(2.92, budget.coverageFactor(0.99), 0.005);
    assertEquals(93, budget.expanded(0.99), 1);
  }

  /** GUM G.4.1 (from memory), in %: u_c 1.03, ν_eff 19.0, U 2.2; not rounded 18.9987. */
  @Test
  void degreesAreRoundedToOneDecimalAndThenCut() {
    UncertaintyBudget budget = budget(influence(0.25, 9), influence(0.57, 4), influence(0.82, 14));
    assertEquals(1.03, budget.combined(), 0.005);
    assertEquals(18.9987, budget.effectiveDegrees(), 0.0005);
    assertEquals(19, budget.wholeDegrees());
    assertEquals(2.2, budget.expanded(0.95), 0.05);
    assertEquals(18, budget(influence(1, 18.94)).wholeDegrees());
    assertEquals(19, budget(influence(1, 18.96)).wholeDegrees());
  }

  /** GUM table G.2, t at 95.45 %. */
  @ParameterizedTest
  @CsvSource({
    "1, 13.97",
    "2, 4.53",
    "3, 3.31",
    "4, 2.87",
    "5, 2.65",
    "8, 2.37",
    "10, 2.28",
    "20, 2.13"
  })
  void coverageFactorIsStudents(double degrees, double published) {
    assertEquals(published, budget(influence(1, degrees)).coverageFactor(0.9545), 0.0051);
  }

  /** commons-math3 as the second opinion. */
  @Test
  void coverageFactorAgreesWithAnotherLibrary() {
    for (int degrees = 1; degrees <= 100; degrees += 9) {
      double other = new TDistribution(degrees).inverseCumulativeProbability(0.995);
      double factor = budget(influence(1, degrees)).coverageFactor(0.99);
      assertEquals(other, factor, 1e-6 * other, degrees + " degrees");
    }
  }

  /** Normal table: 1.95996 and 2.57583. */
  @Test
  void withoutFiniteDegreesTheFactorIsTheNormalOne() {
    UncertaintyBudget budget = budget(influence(0.1, KNOWN), influence(0.2, KNOWN));
    assertEquals(KNOWN, budget.effectiveDegrees());
    assertEquals(1.95996, budget.coverageFactor(0.95), 1e-5);
    assertEquals(2.57583, budget.coverageFactor(0.99), 1e-5);
  }

  @Test
  void nothingUncertainIsZero() {
    UncertaintyBudget budget = budget(influence(0, 3));
    assertEquals(0, budget.combined());
    assertEquals(0, budget.expanded(0.95));
  }

  /** GUM 4.3.3, 4.3.7, 4.3.9, F.2.2.1 (from memory): 0.58 a, 0.41 a, 0.29 δ. */
  @Test
  void distributionsHaveTheirStandardUncertainty() {
    assertEquals(0.577350, UncertaintyBudget.rectangular(1), 1e-6);
    assertEquals(0.408248, UncertaintyBudget.triangular(1), 1e-6);
    assertEquals(0.288675, UncertaintyBudget.resolution(1), 1e-6);
    assertEquals(0.15, UncertaintyBudget.stated(0.3, 2), 1e-15);
  }

  @Test
  void oneInfluenceMoreNeverMakesItLess() {
    double before = 0;
    for (int n = 1; n <= 12; n++) {
      UncertaintyBudget budget =
          UncertaintyBudget.of(
              IntStream.rangeClosed(1, n).mapToObj(i -> influence(1.0 / i, KNOWN)).toList());
      assertTrue(budget.combined() > before);
      before = budget.combined();
    }
  }

  /** Welch and Satterthwaite never leave fewer than the fewest, nor more than all together. */
  @Test
  void effectiveDegreesLieBetweenTheFewestAndTheSum() {
    for (double share = 0; share <= 2; share += 0.05) {
      double degrees = budget(influence(1, 3), influence(share, 7)).effectiveDegrees();
      assertTrue(degrees >= 3 - 1e-9 && degrees <= 10 + 1e-9, share + ": " + degrees);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
  void refusesLevelsThatAreNone(double level) {
    UncertaintyBudget budget = budget(influence(1, 3));
    assertThrows(IllegalArgumentException.class, () -> budget.coverageFactor(level));
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThrows(IllegalArgumentException.class, () -> UncertaintyBudget.of(List.of()));
    assertThrows(IllegalArgumentException.class, () -> influence(-1, 3));
    assertThrows(IllegalArgumentException.class, () -> influence(Double.NaN, 3));
    assertThrows(IllegalArgumentException.class, () -> influence(1, 0.5));
    assertThrows(IllegalArgumentException.class, () -> influence(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> UncertaintyBudget.stated(1, 0));
  }
}
