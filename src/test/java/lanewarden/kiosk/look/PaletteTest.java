package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Contrast of every pair that the structure puts one on the other (WCAG 2.2, 1.4.3, 1.4.6, 1.4.11).
 */
class PaletteTest {
  private static final Pattern COLOUR = Pattern.compile("(-lane-[a-z-]+): (#[0-9a-f]{6});");

  /** Text or sign, and what it stands on. */
  private static final List<List<String>> TEXTS =
      List.of(
          List.of("ink", "ground"),
          List.of("ink", "card"),
          List.of("quiet", "ground"),
          List.of("quiet", "card"),
          List.of("within", "card"),
          List.of("on-accent", "accent"),
          List.of("on-within", "within"),
          List.of("on-over", "over"),
          List.of("on-undecided", "undecided"),
          List.of("on-barred", "barred"),
          List.of("on-running", "running"),
          List.of("on-warn", "warn"));

  /** Edges of controls and the ring of the focus, and what they stand on. */
  private static final List<List<String>> EDGES =
      List.of(
          List.of("edge", "ground"),
          List.of("edge", "card"),
          List.of("focus", "ground"),
          List.of("focus", "card"),
          List.of("accent", "card"));

  // WCAG 2.2 contrast: black/white 21, #767676/white 4.54, #777777/white 4.48
  @ParameterizedTest
  @CsvSource({"#000000, #ffffff, 21.00", "#767676, #ffffff, 4.54", "#777777, #ffffff, 4.48"})
  void contrastAgreesWithKnownPairs(String one, String other, double ratio) {
    assertEquals(ratio, contrast(one, other), 0.005);
  }

  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of(Theme.DAY, 4.5),
        Arguments.of(Theme.NIGHT, 4.5),
        Arguments.of(Theme.SUNLIGHT, 7));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void everyTextStandsOutFromItsGround(Theme theme, double least) throws Exception {
    assertEquals(List.of(), tooClose(theme, TEXTS, least));
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void everyEdgeStandsOutFromItsGround(Theme theme) throws Exception {
    assertEquals(List.of(), tooClose(theme, EDGES, 3));
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void paletteNamesTheSameColoursInEveryTheme(Theme theme) throws Exception {
    assertEquals(palette(Theme.DAY).keySet(), palette(theme).keySet());
  }

  @Test
  void structureHoldsNoColourOfItsOwn() throws Exception {
    try (var in =
        Objects.requireNonNull(
            Theme.class.getResourceAsStream("/lanewarden/kiosk/structure.css"))) {
      String structure = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(
          !Pattern.compile("#[0-9a-fA-F]{3,8}\\b|rgb").matcher(structure).find(),
          "colours belong into the palettes");
    }
  }

  private static List<String> tooClose(Theme theme, List<List<String>> pairs, double least)
      throws Exception {
    Map<String, String> palette = palette(theme);
    List<String> found = new ArrayList<>();
    for (List<String> pair : pairs) {
      double ratio =
          contrast(palette.get("-lane-" + pair.get(0)), palette.get("-lane-" + pair.get(1)));
      if (ratio < least) {
        found.add(pair.get(0) + " on " + pair.get(1) + ": " + ratio);
      }
    }
    return found;
  }

  private static Map<String, String> palette(Theme theme) throws Exception {
    Map<String, String> colours = new LinkedHashMap<>();
    try (var in = theme.palette().openStream()) {
      Matcher matcher = COLOUR.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      while (matcher.find()) {
        colours.put(matcher.group(1), matcher.group(2));
      }
    }
    return colours;
  }

  /** WCAG 2.2, definitions "contrast ratio" and "relative luminance". */
  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
  }

  private static double channel(String colour, int from) {
    double share = Integer.parseInt(colour.substring(from, from + 2), 16) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
