package lanewarden.kiosk.look;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Round numbers to stand at the axis of a picture. */
public final class Ticks {

  private Ticks() {}

  /**
   * Multiples of 1, 2 or 5 times a power of ten.
   *
   * @param from the smallest there may be
   * @param to the largest there may be
   * @param least how far apart they are at least, more than zero
   */
  public static List<BigDecimal> between(double from, double to, double least) {
    BigDecimal step = step(least);
    List<BigDecimal> ticks = new ArrayList<>();
    BigDecimal tick = BigDecimal.valueOf(from).divide(step, 0, RoundingMode.CEILING).multiply(step);
    while (tick.doubleValue() <= to) {
      ticks.add(tick);
      tick = tick.add(step);
    }
    return ticks;
  }

  private static BigDecimal step(double least) {
    int power = (int) Math.floor(Math.log10(least));
    for (int digit : new int[] {1, 2, 5}) {
      BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
      if (step.doubleValue() >= least) {
        return plain(step);
      }
    }
    return plain(BigDecimal.ONE.scaleByPowerOfTen(power + 1));
  }

  private static BigDecimal plain(BigDecimal step) {
    return step.scale() < 0 ? step.setScale(0) : step;
  }
}
