package lanewarden.audit;

import java.io.IOException;
import java.util.List;
import java.util.stream.DoubleStream;
import lanewarden.audit.press.Drawing;
import lanewarden.audit.press.Drawing.Anchor;
import lanewarden.audit.press.Scale;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;
import lanewarden.rules.Rule;

/**
 * The readings of one division against its limit: a column a check, a mark a shot.
 *
 * <p>Marks differ by shape, so that they can be told apart in grey and by whoever sees no colours.
 */
final class ReadingsPicture {
  private static final int WIDTH = 680;
  private static final int HEIGHT = 270;
  private static final double LEFT = 50;
  private static final double RIGHT = WIDTH - 98;
  private static final double TOP = 12;

  /** Below the axis: its title and the legend; the bibs come on top of it. */
  private static final double FOOT = 45;

  private static final double LONGEST_BIB = 70;
  private static final int LONGEST_SHOWN = 10;
  private static final double SMALL = 9.2;
  private static final double LABEL_GAP = 11;
  private static final int DIVIDED_UP_TO = 60;
  private static final String GRID = "stroke=\"#d5d5d5\" stroke-width=\"0.5\"";
  private static final String FRAME = "stroke=\"#111111\" stroke-width=\"0.8\"";
  private static final String LIMIT = "stroke=\"#111111\" stroke-width=\"1.3\"";
  private static final String ALLOWED = LIMIT + " stroke-dasharray=\"6 3\"";

  private final Rule rule;
  private final SpeedUnit unit;
  private final List<Check> checks;
  private final Drawing drawing;
  private final Scale scale;
  private final double bottom;

  ReadingsPicture(Division division, List<Check> checks, Typeface face) throws IOException {
    this.rule = division.rule();
    this.unit = rule.unit();
    this.checks = List.copyOf(checks);
    this.drawing = new Drawing(face, WIDTH, HEIGHT);
    this.scale = scale();
    double longest = 0;
    for (Check check : checks) {
      longest = Math.max(longest, drawing.widthOf(bib(check), SMALL));
    }
    this.bottom = HEIGHT - FOOT - Math.min(longest, LONGEST_BIB);
  }

  /** Other readings may lie anywhere: only what counts, and the limit, makes the scale. */
  private Scale scale() {
    double[] held =
        DoubleStream.concat(
                rule.speed().stream()
                    .flatMapToDouble(s -> DoubleStream.of(value(s.limit()), value(s.allowed()))),
                Figures.counting(checks).stream()
                    .flatMap(c -> c.shots().stream())
                    .filter(TakenShot::isSettled)
                    .mapToDouble(s -> value(s.reading().speed())))
            .toArray();
    return Scale.over(DoubleStream.of(held).min().orElse(0), DoubleStream.of(held).max().orElse(1));
  }

  private double value(Speed speed) {
    return speed.siDouble() / unit.inSi().doubleValue();
  }

  private double y(double value) {
    return bottom - (bottom - TOP) * scale.share(value);
  }

  /** The picture, with its alternative text. */
  String svg(String escapedAlt) throws IOException {
    double slot = (RIGHT - LEFT) / Math.max(checks.size(), 1);
    int every = (int) Math.ceil(LABEL_GAP / slot);
    axes();
    dividers(slot);
    limits();
    for (int i = 0; i < checks.size(); i++) {
      column(checks.get(i), LEFT + slot * i, slot, i % every == 0);
    }
    legend();
    return drawing.svg(escapedAlt);
  }

  private void axes() throws IOException {
    for (double mark : scale.marks()) {
      drawing.line(LEFT, y(mark), RIGHT, y(mark), GRID);
      drawing.text(scale.written(mark), LEFT - 4, y(mark) + 3, SMALL, Anchor.END);
    }
    drawing.path(
        "M" + Drawing.at(LEFT, TOP) + "V" + bottom + "H" + RIGHT, "fill=\"none\" " + FRAME);
    drawing.textUpwards(
        "arrow speed in " + unit.symbol(), 10, (TOP + bottom) / 2, SMALL, Anchor.MIDDLE);
    drawing.text(
        "checks in the order opened, by bib; /2 is a second attempt",
        (LEFT + RIGHT) / 2,
        HEIGHT - 24,
        SMALL,
        Anchor.MIDDLE);
  }

  private void dividers(double slot) {
    for (int i = 1; checks.size() <= DIVIDED_UP_TO && i < checks.size(); i++) {
      drawing.line(LEFT + slot * i, TOP, LEFT + slot * i, bottom, GRID);
    }
  }

  private void limits() throws IOException {
    if (rule.speed().isPresent()) {
      limits(rule.speed().get().limit(), rule.speed().get().allowed());
    }
  }

  private void limits(Speed limit, Speed allowed) throws IOException {
    double at = y(value(limit));
    double allowedAt = y(value(allowed));
    drawing.line(LEFT, at, RIGHT, at, LIMIT);
    double limitLabel = at;
    if (limit.compareTo(allowed) != 0) {
      drawing.line(LEFT, allowedAt, RIGHT, allowedAt, ALLOWED);
      double middle = (at + allowedAt) / 2;
      double half = Math.max(Math.abs(at - allowedAt) / 2, 1.3 * SMALL);
      label("allowed", allowed, allowedAt < at ? middle - half : middle + half);
      limitLabel = allowedAt < at ? middle + half : middle - half;
    }
    label("limit", limit, limitLabel);
  }

  private void label(String word, Speed speed, double y) throws IOException {
    drawing.text(word, RIGHT + 5, y - 1.5, SMALL, Anchor.START);
    drawing.text(Wording.plain(speed), RIGHT + 5, y + SMALL, SMALL, Anchor.START);
  }

  private void column(Check check, double x, double slot, boolean labelled) throws IOException {
    if (labelled) {
      drawing.textUpwards(bib(check), x + slot / 2 + 3, bottom + 4, SMALL, Anchor.END);
    }
    int shots = check.shots().size();
    double gap = Math.min(slot * 0.8 / Math.max(shots, 1), 11);
    Mark mark = new Mark(drawing, Math.max(1.2, Math.min(3.2, gap * 0.36)));
    for (int i = 0; i < shots; i++) {
      shot(check, check.shots().get(i), x + slot / 2 + gap * (i - (shots - 1) / 2.0), mark);
    }
  }

  private static String bib(Check check) {
    int attempt = check.opened().attempt();
    String bib = check.opened().bib();
    String shown = bib.length() > LONGEST_SHOWN ? bib.substring(0, LONGEST_SHOWN) + "…" : bib;
    return attempt > 1 ? shown + "/" + attempt : shown;
  }

  private void shot(Check check, TakenShot shot, double x, Mark mark) throws IOException {
    Speed speed = shot.reading().speed();
    double value = value(speed);
    double y = y(Math.max(scale.low(), Math.min(scale.high(), value)));
    if (!shot.counts()) {
      mark.voided(x, y);
    } else if (!shot.isSettled() || check.inQuestion()) {
      mark.open(x, y);
    } else if (rule.exceeds(speed, check.setUp())) {
      mark.above(x, y);
    } else {
      mark.inside(x, y);
    }
    if (shot.reading().source().equals(ReadingMark.TYPED)) {
      mark.typed(x, y);
    }
    if (!scale.holds(value) && checks.size() <= DIVIDED_UP_TO) {
      drawing.text(
          speed.toString(),
          x + 5,
          y + (value > scale.high() ? SMALL : -3),
          SMALL * 0.8,
          Anchor.START);
    }
  }

  private void legend() throws IOException {
    Mark mark = new Mark(drawing, 3.2);
    double y = HEIGHT - 8;
    double x = LEFT + 4;
    mark.inside(x, y - 3);
    x = entry("keeps the limit", x, y);
    mark.above(x, y - 3);
    x = entry("over the limit", x, y);
    mark.voided(x, y - 3);
    x = entry("void", x, y);
    mark.open(x, y - 3);
    x = entry("in doubt, in question", x, y);
    mark.inside(x, y - 3);
    mark.typed(x, y - 3);
    entry("in a square: typed by an official", x, y);
  }

  private double entry(String words, double x, double y) throws IOException {
    drawing.text(words, x + 8, y, SMALL, Anchor.START);
    return x + 8 + drawing.widthOf(words, SMALL) + 18;
  }
}
