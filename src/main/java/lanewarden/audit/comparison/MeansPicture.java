package lanewarden.audit.comparison;

import java.io.IOException;
import java.util.Map;
import lanewarden.audit.press.Drawing;
import lanewarden.audit.press.Drawing.Anchor;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Scale;
import lanewarden.audit.press.Typeface;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.PracticeShot;
import lanewarden.bench.Showing;

/**
 * The set-ups of a comparison, a row each: the shots that count, the mean and its interval, what
 * the bow's rating makes one expect, and what the divisions allow. Readings that were left out are
 * not in it.
 */
final class MeansPicture {
  private static final int WIDTH = 680;
  private static final double LEFT = 190;
  private static final double RIGHT = WIDTH - 24;
  private static final double TOP = 34;
  private static final double ROW = 25;
  private static final double SMALL = 9.2;
  private static final double LIMIT_LINE = 11;

  private static final String GRID = "stroke=\"#d5d5d5\" stroke-width=\"0.5\"";
  private static final String FRAME = "stroke=\"#111111\" stroke-width=\"0.8\"";
  private static final String REACH = "stroke=\"#00525a\" stroke-width=\"2\"";
  private static final String MEAN = "fill=\"#00525a\"";
  private static final String SHOT = "fill=\"none\" stroke=\"#6a6a6a\" stroke-width=\"0.7\"";
  private static final String EXPECTED =
      "stroke=\"#111111\" stroke-width=\"1.2\" stroke-dasharray=\"1.5 2.5\"";
  private static final String LIMIT =
      "stroke=\"#8a1c08\" stroke-width=\"1.1\" stroke-dasharray=\"6 3\"";

  private final ComparisonSheet sheet;
  private final Ink letters;
  private final Map<String, Double> limits;
  private final Scale speeds;
  private final double bottom;
  private final Drawing drawing;

  MeansPicture(ComparisonSheet sheet, Typeface face, Ink letters) {
    this.sheet = sheet;
    this.letters = letters;
    this.limits = sheet.limits();
    this.speeds = Scale.over(sheet.extent().low(), sheet.extent().high());
    this.bottom = TOP + LIMIT_LINE * limits.size() + ROW * sheet.comparison().showings().size();
    this.drawing = new Drawing(face, WIDTH, (int) Math.ceil(bottom + 30));
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
          letters.plain(limit.getKey()) + " allows " + ComparisonSheet.written(limit.getValue()),
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
            + "; dot and bar: mean and where it lies 95 times in 100; rings: shots that count"
            + (sheet.expectations().isEmpty() ? "" : "; dotted: expected by the rating"),
        LEFT,
        bottom + 25,
        SMALL,
        Anchor.START);
  }

  private void row(Showing showing, double y) throws IOException {
    String name = drawing.fitting(letters.plain(showing.series().name()), SMALL, LEFT - 10);
    drawing.text(name, LEFT - 6, y + 3, SMALL, Anchor.END);
    for (PracticeShot shot : showing.counted()) {
      drawing.circle(x(sheet.in(shot.speed().siDouble())), y + 7, 2.2, SHOT);
    }
    if (showing.interval().isPresent()) {
      double low = x(sheet.in(showing.interval().get().low()));
      double high = x(sheet.in(showing.interval().get().high()));
      drawing.line(low, y - 5, high, y - 5, REACH);
    }
    if (sheet.expected(showing).isPresent()) {
      double low = x(sheet.expected(showing).get().low());
      double high = x(sheet.expected(showing).get().high());
      drawing.line(low, y + 1.5, high, y + 1.5, EXPECTED);
    }
    if (showing.hasMean()) {
      drawing.circle(x(sheet.in(showing.mean().orElseThrow())), y - 5, 3.4, MEAN);
    }
  }

  private double x(double speed) {
    return LEFT + (RIGHT - LEFT) * speeds.share(speed);
  }
}
