package lanewarden.kiosk.rulebook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a speed and a share stand in a picture.
 *
 * @param left of the field, pixels
 * @param top of the field, pixels
 * @param width of the field, pixels
 * @param height of the field, pixels
 * @param from the slowest speed, m/s
 * @param to the fastest speed, m/s
 * @param unit metres a second in one of the unit that is shown
 */
record Axes(
    double left, double top, double width, double height, double from, double to, double unit) {

  /** Pixels from the left. */
  double x(double metresASecond) {
    return left + width * (metresASecond - from) / (to - from);
  }

  /** Pixels from the top. */
  double y(double share) {
    return top + height * (1 - share);
  }

  /** Round speeds in the unit shown, about as far apart as wanted. */
  List<BigDecimal> ticks(double pixelsApart) {
    BigDecimal step = step((to - from) / unit * pixelsApart / width);
    List<BigDecimal> ticks = new ArrayList<>();
    BigDecimal tick =
        BigDecimal.valueOf(from / unit).divide(step, 0, RoundingMode.CEILING).multiply(step);
    while (tick.doubleValue() * unit <= to) {
      ticks.add(tick);
      tick = tick.add(step);
    }
    return ticks;
  }

  /** The next of 1, 2 or 5 times a power of ten. */
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
