package lanewarden.kiosk.setups;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.PracticeShot;
import lanewarden.bench.Showing;
import lanewarden.kiosk.look.Inks.Ink;
import lanewarden.kiosk.look.Picture;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Ticks;
import lanewarden.metrology.Interval;

/**
 * The means, drawn: a row a set-up with its shots as rings, its mean as a disc and the interval of
 * the mean as a bar; what the bow's rating makes one expect is dotted, what divisions allow dashed.
 */
final class MeansPicture extends Picture {
  private static final double ROW = 2.3;
  private static final double NAMES = 15;
  private static final double ROOM = 0.04;
  private static final double[] DASHES = {9, 5};
  private static final double[] DOTS = {2, 4};

  private final Texts texts;
  private Optional<ComparisonSheet> sheet = Optional.empty();

  MeansPicture(Texts texts) {
    this.texts = texts;
    setId("setups-picture");
  }

  /** Draws a comparison in place of the one before. */
  void show(ComparisonSheet next) {
    sheet = Optional.of(next);
    setAccessibleText(spoken(next));
    redraw();
  }

  /** The means, a sentence each. */
  private String spoken(ComparisonSheet shown) {
    return shown.lines().stream()
        .map(
            line ->
                texts.of(
                    "setups.picture.spoken",
                    line.setUp(),
                    texts.number(line.arrow()),
                    texts.number(line.mean()),
                    texts.number(line.reach()),
                    shown.unit().symbol()))
        .collect(Collectors.joining("; "));
  }

  /** Where things stand, pixels; speeds in the sheet's unit. */
  private record Field(double left, double right, double top, double bottom, Interval speeds) {
    double x(double speed) {
      return left + (right - left) * (speed - speeds.low()) / speeds.width();
    }
  }

  @Override
  protected double computePrefHeight(double width) {
    double em = inks().font().getSize();
    return sheet
        .map(shown -> em * (2.1 + shown.limits().size() * 1.2))
        .map(frame -> frame + em * ROW * sheet.orElseThrow().comparison().showings().size())
        .orElse(0.0);
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void draw(GraphicsContext g, double width, double height, double em) {
    sheet.ifPresent(shown -> draw(g, shown, width, height, em));
  }

  private void draw(
      GraphicsContext g, ComparisonSheet shown, double width, double height, double em) {
    Interval held = shown.extent();
    double room = Math.max(1, ROOM * held.width());
    Field field =
        new Field(
            NAMES * em,
            width - em,
            em * (0.6 + shown.limits().size() * 1.2),
            height - 1.5 * em,
            new Interval(held.low() - room, held.high() + room));
    scale(g, field, em);
    limits(g, field, em, shown.limits());
    double row = field.top() + em * ROW / 2;
    for (Showing showing : shown.comparison().showings()) {
      row(g, field, em, row, shown, showing);
      row += em * ROW;
    }
  }

  private void scale(GraphicsContext g, Field field, double em) {
    g.setLineDashes();
    g.setLineWidth(1);
    g.setStroke(inks().of(Ink.EDGE));
    Interval speeds = field.speeds();
    double least = speeds.width() * 5 * em / (field.right() - field.left());
    for (BigDecimal tick : Ticks.between(speeds.low(), speeds.high(), least)) {
      double x = field.x(tick.doubleValue());
      g.strokeLine(x, field.top(), x, field.bottom());
      text(g, texts.number(tick), x, field.bottom() + 0.8 * em, TextAlignment.CENTER);
    }
    g.strokeLine(field.left(), field.bottom(), field.right(), field.bottom());
  }

  private void limits(GraphicsContext g, Field field, double em, Map<String, Double> limits) {
    double y = 0.7 * em;
    for (Map.Entry<String, Double> limit : limits.entrySet()) {
      double x = field.x(limit.getValue());
      g.setStroke(inks().of(Ink.OVER));
      g.setLineWidth(2);
      g.setLineDashes(DASHES);
      g.strokeLine(x, y, x, field.bottom());
      g.setLineDashes();
      String words =
          texts.of(
              "setups.picture.limit",
              limit.getKey(),
              texts.number(ComparisonSheet.written(limit.getValue())));
      boolean leftOfIt = x > (field.left() + field.right()) / 2;
      text(
          g,
          words,
          leftOfIt ? x - 0.5 * em : x + 0.5 * em,
          y,
          leftOfIt ? TextAlignment.RIGHT : TextAlignment.LEFT);
      y += 1.2 * em;
    }
  }

  private void row(
      GraphicsContext g, Field field, double em, double y, ComparisonSheet shown, Showing showing) {
    double widest = (NAMES - 1) * em;
    text(g, showing.series().name(), field.left() - 0.6 * em, y, TextAlignment.RIGHT, widest);
    g.setStroke(inks().of(Ink.TEXT));
    g.setLineWidth(1);
    double ring = 0.26 * em;
    for (PracticeShot shot : showing.counted()) {
      double x = field.x(shown.in(shot.speed().siDouble()));
      g.strokeOval(x - ring, y + 0.66 * em - ring, 2 * ring, 2 * ring);
    }
    g.setLineWidth(2);
    g.setLineDashes(DOTS);
    shown
        .expected(showing)
        .ifPresent(
            i -> g.strokeLine(field.x(i.low()), y + 0.1 * em, field.x(i.high()), y + 0.1 * em));
    g.setLineDashes();
    g.setLineWidth(3);
    showing
        .interval()
        .ifPresent(
            i ->
                g.strokeLine(
                    field.x(shown.in(i.low())),
                    y - 0.5 * em,
                    field.x(shown.in(i.high())),
                    y - 0.5 * em));
    showing
        .mean()
        .ifPresent(
            mean -> {
              double x = field.x(shown.in(mean));
              g.fillOval(x - 0.36 * em, y - 0.86 * em, 0.72 * em, 0.72 * em);
            });
  }
}
