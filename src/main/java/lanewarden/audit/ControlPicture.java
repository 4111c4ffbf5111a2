package lanewarden.audit;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lanewarden.audit.press.Drawing;
import lanewarden.audit.press.Drawing.Anchor;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.Wording;
import lanewarden.metrology.ChartPoint;
import lanewarden.quantity.SpeedUnit;

/** Two control charts, one under the other: single values, and their moving average. */
final class ControlPicture {
  private static final int WIDTH = 680;
  private static final int HEIGHT = 262;
  private static final double LEFT = 50;
  private static final double RIGHT = WIDTH - 12;
  private static final double FIRST = 18;
  private static final double TALL = 86;
  private static final double SECOND = FIRST + TALL + 38;
  private static final double SMALL = 9.2;
  private static final int DECIMALS = 2;
  private static final double ROOM = 1.15;
  private static final double WIDEST_STEP = 60;
  private static final String GRID = "stroke=\"#d5d5d5\" stroke-width=\"0.5\"";
  private static final String FRAME = "stroke=\"#111111\" stroke-width=\"0.8\"";
  private static final String LIMIT =
      "fill=\"none\" stroke=\"#111111\" stroke-width=\"1.1\" stroke-dasharray=\"6 3\"";
  private static final String LINE = "fill=\"none\" stroke=\"#00525a\" stroke-width=\"0.8\"";

  private final double inSi;
  private final double centre;
  private final List<ChartPoint> singles;
  private final List<ChartPoint> averages;
  private final Drawing drawing;
  private final double half;
  private final SpeedUnit unit;
  private final NavigableMap<Integer, Long> rounds;

  /**
   * @param unit of the scale; all figures that come in are in m/s
   * @param rounds the entry of each verification, by the index of its first shot
   */
  ControlPicture(
      SpeedUnit unit,
      double centre,
      List<ChartPoint> singles,
      List<ChartPoint> averages,
      SortedMap<Integer, Long> rounds,
      Typeface face) {
    this.unit = unit;
    this.rounds = new TreeMap<>(rounds);
    this.inSi = unit.inSi().doubleValue();
    this.centre = centre;
    this.singles = List.copyOf(singles);
    this.averages = List.copyOf(averages);
    this.drawing = new Drawing(face, WIDTH, HEIGHT);
    double most =
        Stream.concat(singles.stream(), averages.stream())
            .flatMapToDouble(p -> DoubleStream.of(p.value(), p.lower(), p.upper()))
            .map(v -> Math.abs(v - centre))
            .max()
            .orElse(0);
    // Shots that never differ have no spread, and a scale of no height.
    this.half = most > 0 ? most * ROOM : inSi;
  }

  /** The picture, with its alternative text. */
  String svg(String escapedAlt) throws IOException {
    panel(FIRST, "station minus reference in " + unit.symbol() + ", each shot", singles);
    panel(SECOND, "moving average (EWMA) in " + unit.symbol(), averages);
    drawing.text(
        "shots in the order taken, a column a verification, by its entry; dashed: control limits",
        (LEFT + RIGHT) / 2,
        HEIGHT - 5,
        SMALL,
        Anchor.MIDDLE);
    return drawing.svg(escapedAlt);
  }

  private void panel(double top, String title, List<ChartPoint> points) throws IOException {
    drawing.text(title, LEFT, top - 5, SMALL, Anchor.START);
    mark(top, centre + half / ROOM);
    mark(top, centre);
    mark(top, centre - half / ROOM);
    double bottom = top + TALL;
    columns(top, bottom);
    drawing.path(
        "M" + Drawing.at(LEFT, top) + "V" + bottom + "H" + RIGHT, "fill=\"none\" " + FRAME);
    StringBuilder line = new StringBuilder();
    StringBuilder lower = new StringBuilder();
    StringBuilder upper = new StringBuilder();
    for (int i = 0; i < points.size(); i++) {
      ChartPoint point = points.get(i);
      String to = i == 0 ? "M" : "L";
      line.append(to).append(Drawing.at(x(i), y(top, point.value())));
      lower.append(to).append(Drawing.at(x(i), y(top, point.lower())));
      upper.append(to).append(Drawing.at(x(i), y(top, point.upper())));
    }
    drawing.path(lower.toString(), LIMIT);
    drawing.path(upper.toString(), LIMIT);
    drawing.path(line.toString(), LINE);
    Mark mark = new Mark(drawing, 2.6);
    for (int i = 0; i < points.size(); i++) {
      ChartPoint point = points.get(i);
      double y = y(top, point.value());
      if (point.isOutside()) {
        mark.above(x(i), y);
      } else {
        mark.inside(x(i), y);
      }
    }
  }

  /** Where one verification ends and the next begins; its entry where there is room for it. */
  private void columns(double top, double bottom) throws IOException {
    double free = LEFT;
    for (Map.Entry<Integer, Long> round : rounds.entrySet()) {
      double from = x(round.getKey()) - step() / 2;
      Integer next = rounds.higherKey(round.getKey());
      double to = x(next == null ? singles.size() : next) - step() / 2;
      if (round.getKey() > 0) {
        drawing.line(from, top, from, bottom, GRID);
      }
      String entry = String.valueOf(round.getValue());
      double half = drawing.widthOf(entry, SMALL) / 2;
      double middle = (from + to) / 2;
      if (middle - half >= free) {
        drawing.text(entry, middle, bottom + SMALL + 2, SMALL, Anchor.MIDDLE);
        free = middle + half + SMALL;
      }
    }
  }

  private double step() {
    return Math.min(WIDEST_STEP, (RIGHT - LEFT) / (singles.size() + 1));
  }

  private void mark(double top, double value) throws IOException {
    double y = y(top, value);
    drawing.line(LEFT, y, RIGHT, y, GRID);
    drawing.text(Wording.signed(value / inSi, DECIMALS), LEFT - 4, y + 3, SMALL, Anchor.END);
  }

  private double x(int index) {
    return LEFT + step() * (index + 1);
  }

  private double y(double top, double value) {
    return top + TALL / 2 - TALL / 2 * (value - centre) / half;
  }
}
