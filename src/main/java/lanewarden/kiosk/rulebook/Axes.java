package lanewarden.kiosk.rulebook;

import java.math.BigDecimal;
import java.util.List;
import lanewarden.kiosk.look.Ticks;

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
    return Ticks.between(from / unit, to / unit, (to - from) / unit * pixelsApart / width);
  }
}
