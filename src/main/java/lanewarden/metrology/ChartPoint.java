package lanewarden.metrology;

/**
 * One point of a control chart.
 *
 * @param number counted from 1
 * @param value what is plotted
 * @param lower control limit
 * @param upper control limit
 */
public record ChartPoint(int number, double value, double lower, double upper) {

  /** Whether the point lies beyond a limit, by more than binary arithmetic leaves. */
  public boolean isOutside() {
    double slack = 1e-9 * Math.max(1, Math.max(Math.abs(lower), Math.abs(upper)));
    return value > upper + slack || value < lower - slack;
  }
}
