package lanewarden.audit.comparison;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lanewarden.audit.press.Drawing;
import lanewarden.audit.press.Drawing.Anchor;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Scale;
import lanewarden.audit.press.Typeface;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.PracticeBow;
import lanewarden.bench.Showing;
import lanewarden.quantity.MassUnit;

/**
 * Mean speed over arrow mass, a line and a shape of mark for each bow; the bars are the means'
 * intervals. Bows stand a little beside each other, so that their bars can be told apart.
 */
final class ArrowPicture {
  private static final int WIDTH = 680;
  private static final int HEIGHT = 260;
  private static final double LEFT = 50;
  private static final double RIGHT = WIDTH - 150;
  private static final double TOP = 12;
  private static final double BOTTOM = HEIGHT - 36;
  private static final double SMALL = 9.2;
  private static final double MARK = 4;
  private static final double BESIDE = 5;
  private static final double KEY_LINE = 15;
  private static final String GRID = "stroke=\"#d5d5d5\" stroke-width=\"0.5\"";
  private static final String FRAME = "stroke=\"#111111\" stroke-width=\"0.8\"";
  private static final List<String> INKS = List.of("#00525a", "#8a1c08", "#4a4a4a", "#5b3a8c");

  private final ComparisonSheet sheet;
  private final Ink letters;
  private final Drawing drawing;
  private final List<PracticeBow> bows;
  private final Scale masses;
  private final Scale speeds;

  ArrowPicture(ComparisonSheet sheet, Typeface face, Ink letters) {
    this.sheet = sheet;
    this.letters = letters;
    List<Showing> showings = shown(sheet).toList();
    this.bows = showings.stream().map(showing -> showing.series().bow()).distinct().toList();
    this.drawing = new Drawing(face, WIDTH, Math.max(HEIGHT, (int) Math.ceil(key(bows.size()))));
    this.masses = scale(showings.stream().mapToDouble(ArrowPicture::grains));
    this.speeds =
        scale(
            showings.stream()
                .flatMapToDouble(
                    showing ->
                        showing
                            .interval()
                            .map(i -> DoubleStream.of(sheet.in(i.low()), sheet.in(i.high())))
                            .orElseGet(() -> DoubleStream.of(mean(showing)))));
  }

  private static Stream<Showing> shown(ComparisonSheet sheet) {
    return sheet.comparison().showings().stream().filter(Showing::hasMean);
  }

  private static Scale scale(DoubleStream values) {
    double[] held = values.toArray();
    return Scale.over(DoubleStream.of(held).min().orElse(0), DoubleStream.of(held).max().orElse(1));
  }

  private static double grains(Showing showing) {
    return showing.series().mass().siDouble() / MassUnit.GRAIN.inSi().doubleValue();
  }

  private double mean(Showing showing) {
    return sheet.in(showing.mean().orElseThrow());
  }

  /** The picture, with its alternative text. */
  String svg(String escapedAlt) throws IOException {
    axes();
    for (int i = 0; i < bows.size(); i++) {
      bow(i);
    }
    return drawing.svg(escapedAlt);
  }

  private void axes() throws IOException {
    for (double mark : speeds.marks()) {
      drawing.line(LEFT, y(mark), RIGHT, y(mark), GRID);
      drawing.text(speeds.written(mark), LEFT - 4, y(mark) + 3, SMALL, Anchor.END);
    }
    for (double mark : masses.marks()) {
      drawing.line(x(mark), BOTTOM, x(mark), BOTTOM + 3, FRAME);
      drawing.text(masses.written(mark), x(mark), BOTTOM + 12, SMALL, Anchor.MIDDLE);
    }
    drawing.path(
        "M" + Drawing.at(LEFT, TOP) + "V" + BOTTOM + "H" + RIGHT, "fill=\"none\" " + FRAME);
    drawing.text(
        "arrow mass in gr; upwards: mean speed in "
            + sheet.unit().symbol()
            + " and where it lies 95 times in 100",
        LEFT,
        HEIGHT - 8,
        SMALL,
        Anchor.START);
  }

  private void bow(int index) throws IOException {
    PracticeBow bow = bows.get(index);
    String ink = INKS.get(index % INKS.size());
    double beside = (index - (bows.size() - 1) / 2.0) * BESIDE;
    List<Showing> showings =
        shown(sheet)
            .filter(showing -> showing.series().bow().equals(bow))
            .sorted(Comparator.comparingDouble(ArrowPicture::grains))
            .toList();
    StringBuilder line = new StringBuilder();
    for (Showing showing : showings) {
      double x = x(grains(showing)) + beside;
      line.append(line.length() == 0 ? 'M' : 'L').append(Drawing.at(x, y(mean(showing))));
      if (showing.interval().isPresent()) {
        double low = y(sheet.in(showing.interval().get().low()));
        double high = y(sheet.in(showing.interval().get().high()));
        drawing.line(x, low, x, high, "stroke=\"" + ink + "\" stroke-width=\"1.4\"");
      }
      mark(index, x, y(mean(showing)), ink);
    }
    drawing.path(line.toString(), "fill=\"none\" stroke=\"" + ink + "\" stroke-width=\"0.9\"");
    double key = key(index);
    mark(index, RIGHT + 16, key - 3, ink);
    String label = drawing.fitting(letters.plain(bow.label()), SMALL, WIDTH - RIGHT - 30);
    drawing.text(label, RIGHT + 26, key, SMALL, Anchor.START);
  }

  /** The base line of a bow's name beside the picture. */
  private static double key(int index) {
    return TOP + 10 + KEY_LINE * index;
  }

  /** One of three shapes, full or hollow, so that no bow is told by its colour alone. */
  private void mark(int index, double x, double y, String ink) {
    boolean full = index / 3 % 2 == 0;
    String style =
        (full ? "fill=\"" + ink + "\"" : "fill=\"#ffffff\"")
            + " stroke=\""
            + ink
            + "\" stroke-width=\"1.2\"";
    switch (index % 3) {
      case 0 -> drawing.circle(x, y, MARK, style);
      case 1 -> drawing.path(box(x, y), style);
      default -> drawing.path(triangle(x, y), style);
    }
  }

  private static String box(double x, double y) {
    return "M"
        + Drawing.at(x - MARK, y - MARK)
        + "L"
        + Drawing.at(x + MARK, y - MARK)
        + "L"
        + Drawing.at(x + MARK, y + MARK)
        + "L"
        + Drawing.at(x - MARK, y + MARK)
        + "Z";
  }

  private static String triangle(double x, double y) {
    return "M"
        + Drawing.at(x, y - MARK * 1.3)
        + "L"
        + Drawing.at(x + MARK * 1.2, y + MARK)
        + "L"
        + Drawing.at(x - MARK * 1.2, y + MARK)
        + "Z";
  }

  private double x(double grains) {
    return LEFT + 20 + (RIGHT - LEFT - 40) * masses.share(grains);
  }

  private double y(double speed) {
    return BOTTOM - (BOTTOM - TOP) * speeds.share(speed);
  }
}
