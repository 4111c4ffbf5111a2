package lanewarden.kiosk.instrument;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.DoubleStream;
import lanewarden.kiosk.look.Ticks;
import lanewarden.metrology.ChartPoint;
import lanewarden.station.InstrumentChart;

/**
 * Where a shot and a difference stand in a picture.
 *
 * @param left of the field, pixels
 * @param top of the field, pixels
 * @param width of the field, pixels
 * @param height of the field, pixels
 * @param lowest difference, m/s
 * @param highest difference, m/s
 * @param unit metres a second in one of the unit that is shown
 * @param shots how many there are
 */
record ChartField(
    double left,
    double top,
    double width,
    double height,
    double lowest,
    double highest,
    double unit,
    int shots) {

  private static final double ROOM = 0.08;

  /** A field high enough for the points, their limits, the limit as set and zero. */
  static ChartField around(
      List<ChartPoint> points,
      InstrumentChart chart,
      double left,
      double top,
      double width,
      double height) {
    double set = chart.mostBias().doubleValue();
    double lowest = Math.min(-set, all(points).min().orElse(0));
    double highest = Math.max(set, all(points).max().orElse(0));
    double unit = chart.unit().inSi().doubleValue();
    double room = highest > lowest ? ROOM * (highest - lowest) : unit;
    return new ChartField(
        left, top, width, height, lowest - room, highest + room, unit, points.size());
  }

  private static DoubleStream all(List<ChartPoint> points) {
    return points.stream().flatMapToDouble(p -> DoubleStream.of(p.value(), p.lower(), p.upper()));
  }

  /** Pixels from the left of a shot, counted from 1. */
  double x(double number) {
    return left + width * (number - 0.5) / shots;
  }

  /** Pixels from the top of a difference in m/s. */
  double y(double metresASecond) {
    return top + height * (highest - metresASecond) / (highest - lowest);
  }

  double right() {
    return left + width;
  }

  double bottom() {
    return top + height;
  }

  /** Round differences in the unit shown. */
  List<BigDecimal> differences(double pixelsApart) {
    double least = (highest - lowest) / unit * pixelsApart / height;
    return Ticks.between(lowest / unit, highest / unit, least);
  }

  /** Round numbers of shots. */
  List<BigDecimal> numbers(double pixelsApart) {
    return Ticks.between(1, shots, Math.max(1, shots * pixelsApart / width));
  }
}
