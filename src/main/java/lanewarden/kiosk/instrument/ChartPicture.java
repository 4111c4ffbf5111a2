package lanewarden.kiosk.instrument;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import lanewarden.kiosk.look.Inks.Ink;
import lanewarden.kiosk.look.Picture;
import lanewarden.kiosk.look.Texts;
import lanewarden.metrology.ChartPoint;
import lanewarden.station.InstrumentChart;

/**
 * A control chart, drawn: a point inside its limits is a disc, one outside a large triangle with
 * the word beside it; the limits of the chart are dashed, the limit as set is dotted.
 */
final class ChartPicture extends Picture {

  /**
   * What is drawn.
   *
   * @param points of this chart
   * @param chart centre, limit as set and unit
   */
  record Drawing(List<ChartPoint> points, InstrumentChart chart) {}

  /** What is beside a chart for the names of its lines, times the size of the letters. */
  static final double NAMES = 14.1;

  private static final double[] DASHES = {9, 5};
  private static final double[] DOTS = {2, 5};

  private final Texts texts;
  private Optional<Drawing> drawing = Optional.empty();

  ChartPicture(Texts texts) {
    this.texts = texts;
    getStyleClass().add("chart-picture");
  }

  /** Draws a chart in place of the one before. */
  void show(Drawing next) {
    drawing = Optional.of(next);
    redraw();
  }

  @Override
  protected void draw(GraphicsContext g, double width, double height, double em) {
    drawing.ifPresent(shown -> draw(g, shown, width, height, em));
  }

  private void draw(GraphicsContext g, Drawing shown, double width, double height, double em) {
    ChartField field =
        ChartField.around(
            shown.points(),
            shown.chart(),
            3.6 * em,
            0.5 * em,
            width - (NAMES + 0.5) * em,
            height - 2.2 * em);
    frame(g, field, em);
    lines(g, field, em, shown);
    points(g, field, em, shown.points());
  }

  private void frame(GraphicsContext g, ChartField field, double em) {
    g.setLineDashes();
    g.setStroke(inks().of(Ink.EDGE));
    g.setLineWidth(1);
    g.strokeRect(field.left(), field.top(), field.width(), field.height());
    for (BigDecimal tick : field.differences(1.5 * em)) {
      double y = field.y(tick.doubleValue() * field.unit());
      g.strokeLine(field.left() - 0.3 * em, y, field.left(), y);
      String written = texts.number(tick).replace('-', '\u2212');
      text(g, written, field.left() - 0.5 * em, y, TextAlignment.RIGHT);
    }
    for (BigDecimal tick : field.numbers(2.5 * em)) {
      double x = field.x(tick.doubleValue());
      g.strokeLine(x, field.bottom(), x, field.bottom() + 0.3 * em);
      text(g, texts.number(tick), x, field.bottom() + 0.95 * em, TextAlignment.CENTER);
    }
  }

  /** Zero, centre, limits and the limit as set, each named at the right in its own place. */
  private void lines(GraphicsContext g, ChartField field, double em, Drawing shown) {
    InstrumentChart chart = shown.chart();
    ChartPoint last = shown.points().get(shown.points().size() - 1);
    double set = chart.mostBias().doubleValue();
    double centre = chart.centre().doubleValue();
    level(g, field, 0, Ink.EDGE);
    level(g, field, centre, Ink.TEXT);
    g.setLineDashes(DOTS);
    g.setLineWidth(2.5);
    level(g, field, set, Ink.NOT_DECIDED);
    level(g, field, -set, Ink.NOT_DECIDED);
    g.setLineDashes(DASHES);
    g.setLineWidth(2);
    steps(g, field, shown.points(), ChartPoint::lower);
    steps(g, field, shown.points(), ChartPoint::upper);
    g.setLineDashes();
    Names names = new Names(field, 1.25 * em);
    names.add(last.upper(), texts.of("chart.limit", inUnit(last.upper(), chart)));
    names.add(last.lower(), texts.of("chart.limit", inUnit(last.lower(), chart)));
    names.add(centre, texts.of("chart.centre", inUnit(centre, chart)));
    names.add(set, texts.of("chart.set", inUnit(set, chart)));
    names.add(-set, texts.of("chart.set", inUnit(-set, chart)));
    names
        .placed()
        .forEach(
            name -> text(g, name.words(), field.right() + 0.5 * em, name.y(), TextAlignment.LEFT));
  }

  private String inUnit(double metresASecond, InstrumentChart chart) {
    return ChartViewModel.inUnit(metresASecond, chart.unit(), texts);
  }

  private void level(GraphicsContext g, ChartField field, double at, Ink ink) {
    g.setStroke(inks().of(ink));
    g.strokeLine(field.left(), field.y(at), field.right(), field.y(at));
  }

  private void steps(
      GraphicsContext g,
      ChartField field,
      List<ChartPoint> points,
      ToDoubleFunction<ChartPoint> limit) {
    g.setStroke(inks().of(Ink.OVER));
    g.beginPath();
    g.moveTo(field.left(), field.y(limit.applyAsDouble(points.get(0))));
    for (ChartPoint point : points) {
      double y = field.y(limit.applyAsDouble(point));
      g.lineTo(field.x(point.number() - 0.5), y);
      g.lineTo(field.x(point.number() + 0.5), y);
    }
    g.stroke();
  }

  private void points(GraphicsContext g, ChartField field, double em, List<ChartPoint> points) {
    g.setStroke(inks().of(Ink.TEXT));
    g.setLineWidth(1.5);
    g.strokePolyline(
        points.stream().mapToDouble(p -> field.x(p.number())).toArray(),
        points.stream().mapToDouble(p -> field.y(p.value())).toArray(),
        points.size());
    boolean named = false;
    for (ChartPoint point : points) {
      double x = field.x(point.number());
      double y = field.y(point.value());
      if (point.isOutside()) {
        triangle(g, x, y, 0.55 * em);
        if (!named) {
          boolean leftOfIt = x > field.left() + field.width() / 2;
          String words = texts.of("chart.word");
          double wide = 0.62 * em * words.length();
          g.setFill(inks().of(Ink.CARD));
          g.fillRect(leftOfIt ? x - 0.8 * em - wide : x + 0.8 * em, y - 0.6 * em, wide, 1.2 * em);
          text(
              g,
              words,
              leftOfIt ? x - 0.8 * em : x + 0.8 * em,
              y,
              leftOfIt ? TextAlignment.RIGHT : TextAlignment.LEFT);
        }
      } else {
        g.setFill(inks().of(Ink.TEXT));
        g.fillOval(x - 0.28 * em, y - 0.28 * em, 0.56 * em, 0.56 * em);
      }
      // The word stands once for each run of such points: side by side it could not be read
      named = point.isOutside();
    }
  }

  private void triangle(GraphicsContext g, double x, double y, double half) {
    double[] xs = {x, x + half, x - half};
    double[] ys = {y - half, y + half, y + half};
    g.setFill(inks().of(Ink.OVER));
    g.fillPolygon(xs, ys, 3);
    g.setStroke(inks().of(Ink.CARD));
    g.strokePolygon(xs, ys, 3);
  }
}
