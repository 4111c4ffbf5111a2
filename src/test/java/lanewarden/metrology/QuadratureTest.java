package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class QuadratureTest {

  /** Eight points integrate every polynomial up to degree 15 exactly. */
  @Test
  void polynomialsAreIntegratedExactly() {
    for (int degree = 0; degree <= 15; degree++) {
      int power = degree;
      double exact = (Math.pow(2, degree + 1) - Math.pow(-1, degree + 1)) / (degree + 1);
      double found = GaussLegendre.integral(x -> Math.pow(x, power), -1, 2, 1);
      assertEquals(exact, found, 1e-13 * Math.max(1, exact), "degree " + degree);
    }
  }

  @Test
  void nothingIsIntegratedBackwards() {
    assertEquals(0, GaussLegendre.integral(x -> 1, 2, 1, 1));
  }

  /** Own algebra: two readings differ by a normal deviation of √2. */
  @Test
  void rangeOfTwoIsTheirDifference() {
    for (double width = 0; width < 6; width += 0.25) {
      assertEquals(2 * Bell.below(width / Math.sqrt(2)) - 1, SampleRange.atMost(width, 2), 1e-9);
    }
  }

  @Test
  void rangeWithoutLimitOrOfOneReadingIsAlwaysWithin() {
    assertEquals(1, SampleRange.atMost(Double.POSITIVE_INFINITY, 5));
    assertEquals(1, SampleRange.atMost(0.01, 1));
    assertEquals(1, SampleRange.atMost(15.9, 40), 1e-9);
  }

  @Test
  void lowestReadingUpToEverythingIsTheWholeRange() {
    for (int n = 2; n < 60; n += 7) {
      assertEquals(SampleRange.atMost(2, n), SampleRange.lowestUpTo(40, 2, n), 1e-12);
      assertEquals(0, SampleRange.lowestUpTo(-40, 2, n));
    }
  }
}
