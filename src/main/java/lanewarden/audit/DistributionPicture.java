package lanewarden.audit;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import lanewarden.audit.press.Drawing;
import lanewarden.audit.press.Drawing.Anchor;
import lanewarden.audit.press.Scale;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;
import lanewarden.rules.Rule;

/**
 * How the readings of a division that count are spread, against its limit: a bar a class of speeds.
 *
 * <p>It names nobody, so it may stand in an edition for everybody.
 */
final class DistributionPicture {
  private static final int WIDTH = 680;
  private static final int HEIGHT = 104;
  private static final double LEFT = 50;
  private static final double RIGHT = WIDTH - 98;
  private static final double TOP = 24;
  private static final double BOTTOM = HEIGHT - 32;
  private static final double SMALL = 9.2;
  private static final int CLASSES_A_STEP = 4;
  private static final String GRID = "stroke=\"#d5d5d5\" stroke-width=\"0.5\"";
  private static final String FRAME = "stroke=\"#111111\" stroke-width=\"0.8\"";
  private static final String LIMIT = "stroke=\"#111111\" stroke-width=\"1.3\"";
  private static final String ALLOWED = LIMIT + " stroke-dasharray=\"6 3\"";
  private static final String INSIDE = "fill=\"#9cc5c9\" stroke=\"#00525a\" stroke-width=\"0.6\"";
  private static final String OVER = "fill=\"#8a1c08\" stroke=\"#8a1c08\" stroke-width=\"0.6\"";

  private final Rule rule;
  private final Drawing drawing;
  private final Scale speeds;
  private final int[] all;
  private final int[] over;
  private final Scale counts;

  DistributionPicture(Division division, List<Check> checks, Typeface face) {
    this.rule = division.rule();
    this.drawing = new Drawing(face, WIDTH, HEIGHT);
    double[] held =
        DoubleStream.concat(
                rule.speed().stream()
                    .flatMapToDouble(s -> DoubleStream.of(value(s.limit()), value(s.allowed()))),
                checks.stream()
                    .flatMap(c -> c.shots().stream())
                    .filter(TakenShot::isSettled)
                    .mapToDouble(s -> value(s.reading().speed())))
            .toArray();
    this.speeds =
        Scale.over(DoubleStream.of(held).min().orElse(0), DoubleStream.of(held).max().orElse(1));
    int classes = (int) Math.round((speeds.high() - speeds.low()) / width());
    this.all = new int[classes];
    this.over = new int[classes];
    checks.forEach(this::count);
    this.counts = Scale.over(0, DoubleStream.of(heights()).max().orElse(1));
  }

  private double[] heights() {
    return Arrays.stream(all).asDoubleStream().toArray();
  }

  private double width() {
    return speeds.step() / CLASSES_A_STEP;
  }

  private double value(Speed speed) {
    return speed.siDouble() / rule.unit().inSi().doubleValue();
  }

  private void count(Check check) {
    check.shots().stream()
        .filter(TakenShot::isSettled)
        .forEach(
            shot -> {
              Speed speed = shot.reading().speed();
              int at = (int) ((value(speed) - speeds.low()) / width());
              all[Math.min(at, all.length - 1)]++;
              if (rule.exceeds(speed, check.setUp())) {
                over[Math.min(at, all.length - 1)]++;
              }
            });
  }

  /** The picture, with its alternative text. */
  String svg(String escapedAlt) throws IOException {
    axes();
    for (int i = 0; i < all.length; i++) {
      double from = x(speeds.low() + i * width());
      double to = x(speeds.low() + (i + 1) * width());
      bar(from, to, over[i], all[i], INSIDE);
      bar(from, to, 0, over[i], OVER);
    }
    if (rule.speed().isPresent()) {
      limit("limit", rule.speed().get().limit(), LIMIT, TOP - 18);
      if (rule.speed().get().limit().compareTo(rule.speed().get().allowed()) != 0) {
        limit("allowed", rule.speed().get().allowed(), ALLOWED, TOP - 7);
      }
    }
    legend();
    return drawing.svg(escapedAlt);
  }

  private void axes() throws IOException {
    for (double mark : counts.marks()) {
      if (mark == Math.rint(mark)) {
        drawing.line(LEFT, y(mark), RIGHT, y(mark), GRID);
        drawing.text(String.valueOf(Math.round(mark)), LEFT - 4, y(mark) + 3, SMALL, Anchor.END);
      }
    }
    for (double mark : speeds.marks()) {
      drawing.line(x(mark), BOTTOM, x(mark), BOTTOM + 3, FRAME);
      drawing.text(speeds.written(mark), x(mark), BOTTOM + 11, SMALL, Anchor.MIDDLE);
    }
    drawing.path(
        "M" + Drawing.at(LEFT, TOP) + "V" + BOTTOM + "H" + RIGHT, "fill=\"none\" " + FRAME);
    drawing.textUpwards("readings", 10, (TOP + BOTTOM) / 2, SMALL, Anchor.MIDDLE);
  }

  private void bar(double from, double to, double low, double high, String style) {
    if (high > low) {
      drawing.path(
          "M" + Drawing.at(from, y(low)) + "V" + y(high) + "H" + to + "V" + y(low) + "Z", style);
    }
  }

  private void limit(String word, Speed speed, String style, double textAt) throws IOException {
    double x = x(value(speed));
    drawing.line(x, textAt + 2, x, BOTTOM, style);
    drawing.text(word + " " + Wording.plain(speed), x + 4, textAt + 5, SMALL, Anchor.START);
  }

  private void legend() throws IOException {
    double y = HEIGHT - 4;
    drawing.text(
        "arrow speed in " + rule.unit().symbol() + ", readings that count",
        LEFT,
        y,
        SMALL,
        Anchor.START);
    box(LEFT + 230, y, INSIDE);
    drawing.text("light: keeps the limit", LEFT + 244, y, SMALL, Anchor.START);
    box(LEFT + 370, y, OVER);
    drawing.text("dark: over the limit", LEFT + 384, y, SMALL, Anchor.START);
  }

  private void box(double x, double y, String style) {
    drawing.path("M" + Drawing.at(x, y) + "h9v-8h-9Z", style);
  }

  private double x(double speed) {
    return LEFT + (RIGHT - LEFT) * speeds.share(speed);
  }

  private double y(double count) {
    return BOTTOM - (BOTTOM - TOP) * counts.share(count);
  }
}
