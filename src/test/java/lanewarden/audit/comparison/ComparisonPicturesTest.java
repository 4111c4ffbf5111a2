package lanewarden.audit.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.press.Typefaces;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.Practice;
import org.junit.jupiter.api.Test;

/** Both pictures hold names as people type them. */
class ComparisonPicturesTest {
  private static final Pattern POINT = Pattern.compile("[MLQC ](-?[0-9.]+) (-?[0-9.]+)");
  private static final Pattern SIZE = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"");

  /** Draws one of the two. */
  private interface Picture {
    String svg(ComparisonSheet sheet, Typeface face, Ink ink) throws Exception;
  }

  private static final List<Picture> PICTURES =
      List.of(
          (sheet, face, ink) -> new MeansPicture(sheet, face, ink).svg(""),
          (sheet, face, ink) -> new ArrowPicture(sheet, face, ink).svg(""));

  private static ComparisonSheet shot(List<String> bows) throws Exception {
    StringBuilder lines = new StringBuilder("bow,arrow,arrow-mass,speed\n");
    for (String bow : bows) {
      lines.append(bow).append(",long,350 gr,298 ft/s\n").append(bow).append(",long,,300 ft/s\n");
    }
    byte[] utf8 = lines.toString().getBytes(StandardCharsets.UTF_8);
    return new ComparisonSheet(Comparison.of(Practice.read("odd.csv", utf8), Optional.empty()));
  }

  private static String drawn(Picture picture, String... bows) throws Exception {
    try (Typefaces faces = Typefaces.open()) {
      return picture.svg(shot(List.of(bows)), faces.of(Cut.TEXT), faces.ink());
    }
  }

  private static void assertNothingOutside(String svg) {
    double[] size =
        SIZE.matcher(svg)
            .results()
            .flatMapToDouble(
                s -> IntStream.of(1, 2).mapToDouble(i -> Double.parseDouble(s.group(i))))
            .toArray();
    POINT
        .matcher(svg.substring(svg.indexOf('>')))
        .results()
        .forEach(
            point -> {
              double x = Double.parseDouble(point.group(1));
              double y = Double.parseDouble(point.group(2));
              assertTrue(x >= 0 && x <= size[0] && y >= 0 && y <= size[1], point.group());
            });
  }

  @Test
  void longNameEndsWithAnEllipsisInsideThePicture() throws Exception {
    for (Picture picture : PICTURES) {
      assertNothingOutside(drawn(picture, "W".repeat(80)));
    }
  }

  @Test
  void characterThatTheTypefaceLacksStandsAsItsNumber() throws Exception {
    for (Picture picture : PICTURES) {
      assertEquals(drawn(picture, "Bow [U+1F3F9]"), drawn(picture, "Bow \ud83c\udff9"));
    }
  }

  @Test
  void asManyBowsAsAFileMayHaveAreAllInThePicture() throws Exception {
    String[] bows =
        IntStream.range(0, Practice.MOST_SET_UPS).mapToObj(i -> "Bow " + i).toArray(String[]::new);
    for (Picture picture : PICTURES) {
      assertNothingOutside(drawn(picture, bows));
    }
  }
}
