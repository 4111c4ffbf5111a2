package lanewarden.audit.comparison;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lanewarden.audit.press.Drawing;
import lanewarden.audit.press.Drawing.Anchor;
import lanewarden.audit.press.Scale;
import lanewarden.audit.press.Typeface;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.LimitMargin;
import lanewarden.bench.PracticeShot;
import lanewarden.bench.Showing;

/**
 * The set-ups of a comparison, a row each: the shots that count, the mean and its interval, and
 * what the divisions allow. Readings that were left out are not in it.
 */
final class MeansPicture {
  private static final int WIDTH = 680;
  private static final double LEFT = 190;
  private static final double RIGHT = WIDTH - 24;
  private static final double TOP = 34;
  private static final double ROW = 20;
  private static final double SMALL = 9.2;
  private static final double LIMIT_LINE = 11;

  /** How far from the middle of what was shot a limit is still shown, in widths of that. */
  private static final double NEAR = 0.7;

  private static final String GRID = "stroke=\"#d5d5d5\" stroke-width=\"0.5\"";
  private static final String FRAME = "stroke=\"#111111\" stroke-width=\"0.8\"";
  private static final String REACH = "stroke=\"#00525a\" stroke-width=\"2\"";
  private static final String MEAN = "fill=\"#00525a\"";
  private static final String SHOT = "fill=\"none\" stroke=\"#6a6a6a\" stroke-width=\"0.7\"";
  private static final String LIMIT =
      "stroke=\"#8a1c08\" stroke-width=\"1.1\" stroke-dasharray=\"6 3\"";

  private final ComparisonSheet sheet;
  private final Map<String, Double> limits;
  private final Scale speeds;
  private final double bottom;
  private final Drawing drawing;

  MeansPicture(ComparisonSheet sheet, Typeface face) {
    this.sheet = sheet;
    Scale shown = scale(sheet, DoubleStream.empty());
    this.limits = limits(sheet, shown);
    this.speeds = scale(sheet, limits.values().stream().mapToDouble(Double::doubleValue));
    this.bottom = TOP + LIMIT_LINE * limits.size() + ROW * sheet.comparison().showings().size();
    this.drawing = new Drawing(face, WIDTH, (int) Math.ceil(bottom + 30));
  }

  private static Scale scale(ComparisonSheet sheet, DoubleStream more) {
    double[] held =
        DoubleStream.concat(
                more,
                sheet.comparison().showings().stream()
                    .flatMapToDouble(
                        showing ->
                            DoubleStream.concat(
                                showing.counted().stream()
                                    .mapToDouble(shot -> sheet.in(shot.speed().siDouble())),
                                showing.interval().stream()
                                    .flatMap(i -> Stream.of(i.low(), i.high()))
                                    .mapToDouble(sheet::in))))
            .toArray();
    return Scale.over(DoubleStream.of(held).min().orElse(0), DoubleStream.of(held).max().orElse(1));
  }

  /** What divisions allow, where it is not far from what was shot. */
  private static Map<String, Double> limits(ComparisonSheet sheet, Scale shown) {
    double room = shown.high() - shown.low();
    Map<String, Double> limits = new LinkedHashMap<>();
    for (LimitMargin margin : sheet.comparison().margins()) {
      double allowed = margin.allowed().map(a -> sheet.in(a.siDouble())).orElse(Double.NaN);
      if (Math.abs(allowed - (shown.low() + room / 2)) < NEAR * room) {
        limits.putIfAbsent(margin.division().code(), allowed);
      }
    }
    return limits;
  }

  /** The picture, with its alternative text. */
  String svg(String escapedAlt) throws IOException {
    axes();
    double y = TOP - 20;
    for (Map.Entry<String, Double> limit : limits.entrySet()) {
      y += LIMIT_LINE;
      double x = x(limit.getValue());
      drawing.line(x, y - 6, x, bottom, LIMIT);
      drawing.text(
          limit.getKey() + " allows " + speeds.written(limit.getValue()),
          x - 4,
          y,
          SMALL,
          Anchor.END);
    }
    double row = bottom - ROW * sheet.comparison().showings().size() + ROW / 2;
    for (Showing showing : sheet.comparison().showings()) {
      row(showing, row);
      row += ROW;
    }
    return drawing.svg(escapedAlt);
  }

  private void axes() throws IOException {
    double top = bottom - ROW * sheet.comparison().showings().size();
    for (double mark : speeds.marks()) {
      drawing.line(x(mark), top, x(mark), bottom, GRID);
      drawing.text(speeds.written(mark), x(mark), bottom + 12, SMALL, Anchor.MIDDLE);
    }
    drawing.path(
        "M" + Drawing.at(LEFT, top) + "V" + bottom + "H" + RIGHT, "fill=\"none\" " + FRAME);
    drawing.text(
        sheet.unit().symbol()
            + "; rings: shots that count; dot and bar: mean and where it lies 95 times in 100",
        LEFT,
        bottom + 25,
        SMALL,
        Anchor.START);
  }

  private void row(Showing showing, double y) throws IOException {
    drawing.text(fitting(showing.series().name()), LEFT - 6, y + 3, SMALL, Anchor.END);
    for (PracticeShot shot : showing.counted()) {
      drawing.circle(x(sheet.in(shot.speed().siDouble())), y + 4, 2.2, SHOT);
    }
    if (showing.interval().isPresent()) {
      double low = x(sheet.in(showing.interval().get().low()));
      double high = x(sheet.in(showing.interval().get().high()));
      drawing.line(low, y - 3, high, y - 3, REACH);
    }
    if (showing.hasMean()) {
      drawing.circle(x(sheet.in(showing.mean().orElseThrow())), y - 3, 3.4, MEAN);
    }
  }

  private String fitting(String name) throws IOException {
    String shown = name;
    for (int end = name.length(); drawing.widthOf(shown, SMALL) > LEFT - 10; end--) {
      shown = name.substring(0, end) + "…";
    }
    return shown;
  }

  private double x(double speed) {
    return LEFT + (RIGHT - LEFT) * speeds.share(speed);
  }
}
