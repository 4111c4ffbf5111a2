package lanewarden.metrology;

import java.util.List;
import lanewarden.quantity.Speed;

/**
 * The mean and scatter of a set of speeds, for reports; verdicts use exact means instead.
 *
 * @param count how many speeds, at least one
 * @param mean arithmetic mean, m/s
 * @param deviation sample standard deviation (divisor count − 1), m/s; 0 for one speed
 */
public record Spread(int count, double mean, double deviation) {

  /**
   * The spread of at least one speed, in two passes so that nearly equal speeds lose no digits.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Spread of(List<Speed> speeds) {
    if (speeds.isEmpty()) {
      throw new IllegalArgumentException("no spread of no speeds");
    }
    int n = speeds.size();
    double mean = speeds.stream().mapToDouble(Speed::siDouble).sum() / n;
    double squares =
        speeds.stream().mapToDouble(Speed::siDouble).map(v -> (v - mean) * (v - mean)).sum();
    return new Spread(n, mean, n == 1 ? 0 : Math.sqrt(squares / (n - 1)));
  }
}
