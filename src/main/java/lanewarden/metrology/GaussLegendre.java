package lanewarden.metrology;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Integrals of smooth functions by Gauss–Legendre quadrature, panel by panel.
 *
 * <p>Nodes and weights are found by Newton's method on the Legendre polynomial (Abramowitz and
 * Stegun 25.4.29, from memory).
 */
final class GaussLegendre {
  private static final int POINTS = 8;
  private static final double[] NODES = new double[POINTS];
  private static final double[] WEIGHTS = new double[POINTS];

  static {
    for (int i = 0; i < POINTS; i++) {
      double x = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
      double slope = 1;
      for (int step = 0; step < 8; step++) {
        double before = 1;
        double value = x;
        for (int degree = 2; degree <= POINTS; degree++) {
          double next = ((2 * degree - 1) * x * value - (degree - 1) * before) / degree;
          before = value;
          value = next;
        }
        slope = POINTS * (x * value - before) / (x * x - 1);
        x -= value / slope;
      }
      NODES[i] = x;
      WEIGHTS[i] = 2 / ((1 - x * x) * slope * slope);
    }
  }

  /**
   * Where a function is asked.
   *
   * @param weight of its answer
   */
  record Node(double at, double weight) {}

  /** What is done at a node. */
  private interface Step {
    void at(double node, double weight);
  }

  private GaussLegendre() {}

  /**
   * The integral over an order statistic of so many normal readings, whose bends are no narrower
   * than 1/√readings.
   *
   * @param from lower end, in standard deviations
   * @param to upper end; nothing is integrated if it is not above the lower one
   */
  static double integral(DoubleUnaryOperator function, double from, double to, int readings) {
    double[] sum = new double[1];
    walk(from, to, readings, (at, weight) -> sum[0] += weight * function.applyAsDouble(at));
    return sum[0];
  }

  /** Where the same integral asks its function, for whoever asks many functions there. */
  static List<Node> nodes(double from, double to, int readings) {
    List<Node> nodes = new ArrayList<>();
    walk(from, to, readings, (at, weight) -> nodes.add(new Node(at, weight)));
    return nodes;
  }

  private static void walk(double from, double to, int readings, Step step) {
    if (to <= from) {
      return;
    }
    int panels = (int) Math.ceil((to - from) * Math.sqrt(readings) / 3);
    double half = (to - from) / panels / 2;
    for (int panel = 0; panel < panels; panel++) {
      double middle = from + (2 * panel + 1) * half;
      for (int i = 0; i < POINTS; i++) {
        step.at(middle + half * NODES[i], half * WEIGHTS[i]);
      }
    }
  }
}
