package lanewarden.kiosk.rulebook;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.TextAlignment;
import lanewarden.kiosk.look.Inks.Ink;
import lanewarden.kiosk.look.Picture;
import lanewarden.kiosk.look.Texts;
import lanewarden.metrology.CurvePoint;
import lanewarden.quantity.Speed;
import lanewarden.station.RuleCurve;

/**
 * How checks end against the true speed, drawn: each ending has its own dashes, the second rule
 * rings on thinner lines, so that no line is told by its colour alone.
 */
final class CurvePicture extends Picture {
  private static final double SMALLEST_SHARE = 0.005;
  private static final int RINGS = 12;

  private enum Ending {
    WITHIN("curve.within", Ink.WITHIN, p -> p.ending().within()),
    OVER("curve.over", Ink.OVER, p -> p.ending().over(), 14, 6),
    NOT_DECIDED("curve.not-decided", Ink.NOT_DECIDED, p -> p.ending().notDecided(), 1, 7);

    private final String words;
    private final Ink ink;
    private final ToDoubleFunction<CurvePoint> share;
    private final double[] dashes;

    Ending(String words, Ink ink, ToDoubleFunction<CurvePoint> share, double... dashes) {
      this.words = words;
      this.ink = ink;
      this.share = share;
      this.dashes = dashes;
    }

    boolean happens(RuleCurve curve) {
      return curve.points().stream().anyMatch(p -> share.applyAsDouble(p) > SMALLEST_SHARE);
    }
  }

  private final Texts texts;
  private EffectPage page =
      new EffectPage(Optional.empty(), Optional.empty(), Optional.empty(), "");

  CurvePicture(Texts texts) {
    this.texts = texts;
    getStyleClass().add("curve-picture");
    setId("curve");
  }

  /** Shows a page in place of the one before. */
  void show(EffectPage next) {
    page = next;
    setAccessibleText(words(next));
    redraw();
  }

  private String words(EffectPage page) {
    return page.first().map(shown -> texts.of(shown.effect().inWords())).orElse("");
  }

  @Override
  protected void draw(GraphicsContext g, double width, double height, double em) {
    Optional<RuleCurve> first = page.first().flatMap(EffectPage.Shown::curve);
    Optional<RuleCurve> second = page.second().flatMap(EffectPage.Shown::curve);
    Optional<RuleCurve> axis = first.or(() -> second);
    if (axis.isEmpty()) {
      text(g, words(page), width / 2, height / 2, TextAlignment.CENTER);
      return;
    }
    List<CurvePoint> points = axis.get().points();
    Axes axes =
        new Axes(
            3.9 * em,
            3.6 * em,
            width - 5.1 * em,
            height - 6.2 * em,
            points.get(0).speed(),
            points.get(points.size() - 1).speed(),
            axis.get().unit().inSi().doubleValue());
    frame(g, axes, em, axis.get().unit().symbol());
    first.ifPresent(curve -> limits(g, axes, em, curve, false));
    second.ifPresent(curve -> limits(g, axes, em, curve, true));
    second.ifPresent(curve -> lines(g, axes, curve, true));
    first.ifPresent(curve -> lines(g, axes, curve, false));
    legend(g, axes, em, first, second);
  }

  private void frame(GraphicsContext g, Axes axes, double em, String unit) {
    g.setLineDashes();
    g.setLineWidth(1);
    g.setStroke(inks().of(Ink.EDGE));
    for (int percent = 0; percent <= 100; percent += 25) {
      double y = axes.y(percent / 100.0);
      g.strokeLine(axes.left(), y, axes.left() + axes.width(), y);
      if (percent % 50 == 0) {
        text(g, percent + " %", axes.left() - 0.4 * em, y, TextAlignment.RIGHT);
      }
    }
    double bottom = axes.top() + axes.height();
    for (BigDecimal tick : axes.ticks(5 * em)) {
      double x = axes.x(tick.doubleValue() * axes.unit());
      g.strokeLine(x, bottom, x, bottom + 0.4 * em);
      text(g, texts.number(tick), x, bottom + 0.95 * em, TextAlignment.CENTER);
    }
    text(
        g,
        texts.of("curve.axis", unit),
        axes.left() + axes.width() / 2,
        bottom + 2 * em,
        TextAlignment.CENTER);
  }

  /** The limit, and what is allowed where that is another speed. */
  private void limits(GraphicsContext g, Axes axes, double em, RuleCurve curve, boolean second) {
    boolean same = curve.limit().compareTo(curve.allowed()) == 0;
    mark(g, axes, em, curve.limit(), texts.of("curve.limit", plain(curve.limit())), second, !same);
    if (!same) {
      String words = texts.of("curve.allowed", plain(curve.allowed()));
      mark(g, axes, em, curve.allowed(), words, second, false);
    }
  }

  private String plain(Speed speed) {
    return texts.number(speed.value().stripTrailingZeros());
  }

  private void mark(
      GraphicsContext g,
      Axes axes,
      double em,
      Speed at,
      String words,
      boolean second,
      boolean leftOfIt) {
    double x = axes.x(at.siDouble());
    g.setStroke(inks().of(Ink.TEXT));
    g.setLineDashes(second ? new double[] {2, 4} : new double[0]);
    g.setLineWidth(second ? 1 : 1.5);
    double above = second ? 0.75 * em : 1.85 * em;
    g.strokeLine(x, axes.top() - 0.2 * em, x, axes.top() + axes.height());
    if (second) {
      g.setLineDashes();
      g.setFill(inks().of(Ink.CARD));
      g.fillOval(x - 4, axes.top() + 0.3 * em, 8, 8);
      g.strokeOval(x - 4, axes.top() + 0.3 * em, 8, 8);
      return;
    }
    text(
        g,
        words,
        leftOfIt ? x - 0.3 * em : x + 0.3 * em,
        axes.top() - above + em,
        leftOfIt ? TextAlignment.RIGHT : TextAlignment.LEFT);
  }

  private void lines(GraphicsContext g, Axes axes, RuleCurve curve, boolean second) {
    g.setLineCap(StrokeLineCap.ROUND);
    for (Ending ending : Ending.values()) {
      if (!ending.happens(curve)) {
        continue;
      }
      g.setStroke(inks().of(ending.ink));
      g.setLineWidth(second ? 1.5 : 3);
      g.setLineDashes(ending.dashes);
      g.beginPath();
      boolean begun = false;
      for (CurvePoint point : curve.points()) {
        double x = axes.x(point.speed());
        double y = axes.y(ending.share.applyAsDouble(point));
        if (begun) {
          g.lineTo(x, y);
        } else {
          g.moveTo(x, y);
          begun = true;
        }
      }
      g.stroke();
      g.setLineDashes();
      if (second) {
        rings(g, axes, curve, ending);
      }
    }
    g.setLineCap(StrokeLineCap.BUTT);
  }

  private void rings(GraphicsContext g, Axes axes, RuleCurve curve, Ending ending) {
    int step = Math.max(1, curve.points().size() / RINGS);
    g.setFill(inks().of(Ink.CARD));
    for (int i = step / 2; i < curve.points().size(); i += step) {
      CurvePoint point = curve.points().get(i);
      double x = axes.x(point.speed());
      double y = axes.y(ending.share.applyAsDouble(point));
      g.fillOval(x - 4, y - 4, 8, 8);
      g.strokeOval(x - 4, y - 4, 8, 8);
    }
  }

  private void legend(
      GraphicsContext g,
      Axes axes,
      double em,
      Optional<RuleCurve> first,
      Optional<RuleCurve> second) {
    double x = axes.left();
    double y = 0.9 * em;
    for (Ending ending : Ending.values()) {
      if (first.filter(ending::happens).or(() -> second.filter(ending::happens)).isEmpty()) {
        continue;
      }
      g.setStroke(inks().of(ending.ink));
      g.setLineWidth(3);
      g.setLineDashes(ending.dashes);
      g.setLineCap(StrokeLineCap.ROUND);
      g.strokeLine(x, y, x + 2.6 * em, y);
      g.setLineDashes();
      g.setLineCap(StrokeLineCap.BUTT);
      String words = texts.of(ending.words);
      text(g, words, x + 3.1 * em, y, TextAlignment.LEFT);
      x += (4.4 + 0.62 * words.length()) * em;
    }
    if (second.isPresent()) {
      g.setStroke(inks().of(Ink.TEXT));
      g.setLineWidth(1.5);
      g.strokeLine(x, y, x + 2.2 * em, y);
      g.setFill(inks().of(Ink.CARD));
      g.fillOval(x + 1.1 * em - 4, y - 4, 8, 8);
      g.strokeOval(x + 1.1 * em - 4, y - 4, 8, 8);
      String name = page.second().map(EffectPage.Shown::name).orElse("");
      double left = x + 2.7 * em;
      double right = axes.left() + axes.width() + em;
      text(g, name, left, y, TextAlignment.LEFT, Math.max(em, right - left));
    }
  }
}
