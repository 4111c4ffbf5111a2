package lanewarden.audit.press;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The vertical scale of a picture: round steps that hold every value.
 *
 * @param low the lowest value of the scale
 * @param high the highest
 * @param step between two marks
 */
public record Scale(double low, double high, double step) {
  private static final int STEPS = 6;
  private static final double MARGIN = 0.08;
  private static final double[] ROUND = {1, 2, 5, 10};

  /** A scale for values between these two, with some room above and below. */
  public static Scale over(double least, double most) {
    double span = Math.max(most - least, Math.max(most, 1) * 0.02);
    double from = Math.max(0, least - MARGIN * span);
    double to = most + MARGIN * span;
    double step = roundStep((to - from) / STEPS);
    return new Scale(Math.floor(from / step) * step, Math.ceil(to / step) * step, step);
  }

  private static double roundStep(double raw) {
    double ten = Math.pow(10, Math.floor(Math.log10(raw)));
    for (double round : ROUND) {
      if (round * ten >= raw) {
        return round * ten;
      }
    }
    return 10 * ten;
  }

  /** Whether a value lies between its ends. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }

  /** How far up a value is, from 0 at the bottom to 1 at the top. */
  public double share(double value) {
    return (value - low) / (high - low);
  }

  /** The values to mark. */
  public List<Double> marks() {
    List<Double> marks = new ArrayList<>();
    long count = Math.round((high - low) / step);
    for (long i = 0; i <= count; i++) {
      marks.add(low + i * step);
    }
    return marks;
  }

  /** A mark as it is written, with no more decimals than its step has. */
  public String written(double mark) {
    int decimals = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
    return new BigDecimal(mark).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }
}
