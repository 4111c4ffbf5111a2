package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The part of CSS that the program reads, against Selectors Level 3 and CSS 2.1 (from memory). */
class StylesheetTest {
  private static final Element BODY = Element.root("body");

  private static Style style(String css, Element element) {
    return Stylesheet.of(css).of(element);
  }

  @Test
  void aClassWeighsMoreThanElementsAndTheLaterOneWins() {
    Element cell =
        BODY.inside("table", "list").inside("tbody", "").inside("tr", "").inside("td", "number");
    String css = ".number { width: 20pt } table tbody tr td { width: 30pt } .list { width: 5pt }";
    assertEquals(20, style(css, cell).width().length());
    assertEquals(9, style(css + " .number { width: 9pt }", cell).width().length());
    assertEquals(40, style(css + " .list .number { width: 40pt }", cell).width().length());
  }

  @Test
  void aSelectorNeedsAllItsPartsInTheirOrder() {
    Element bare = BODY.inside("p", "");
    Element good = BODY.inside("div", "seal").inside("p", "good statement");
    String css = ".seal p { width: 7pt } p.statement.good { padding: 1pt }";
    assertTrue(style(css, bare).width().isOpen());
    assertEquals(7, style(css, good).width().length());
    assertEquals(1, style(css, good).padding().left());
    assertTrue(style("p .seal { width: 7pt }", good).width().isOpen());
  }

  @Test
  void lettersAreInheritedAndBoxesAreNot() {
    Element inner = BODY.inside("div", "").inside("span", "fixed");
    String css =
        "body { font: 10pt text; color: #ff8000; line-height: 1.5; margin: 3pt }"
            + " .fixed { font-family: fixed; font-size: 0.9em }";
    Style style = style(css, inner);
    assertEquals(
        new Lettering(Cut.FIXED, 9, 1.5f, 0xff8000, false, false, false, "•"), style.letters());
    assertEquals(Style.Sides.NONE, style.margin());
  }

  @Test
  void oneToFourLengthsStandForTheSides() {
    Element p = BODY.inside("p", "");
    assertEquals(new Style.Sides(1, 1, 1, 1), style("p { margin: 1pt }", p).margin());
    assertEquals(new Style.Sides(1, 2, 1, 2), style("p { margin: 1pt 2pt }", p).margin());
    assertEquals(new Style.Sides(1, 2, 3, 2), style("p { margin: 1pt 2pt 3pt }", p).margin());
    assertEquals(new Style.Sides(1, 2, 3, 4), style("p { margin: 1pt 2pt 3pt 4pt }", p).margin());
  }

  @Test
  void aMillimetreIsSeventyTwoPointsInTwentyFivePointFour() {
    Paper paper = Stylesheet.of("@page { size: A4; margin: 25.4mm }").paper();
    assertEquals(595.28, paper.width(), 0.01);
    assertEquals(841.89, paper.height(), 0.01);
    assertEquals(72, paper.edges().left(), 0.001);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p { float: left }",
        "p { margin: 3furlong }",
        "p { text-shadow: none }",
      })
  void whatIsNotUnderstoodIsRefused(String css) {
    assertThrows(IllegalStateException.class, () -> style(css, BODY.inside("p", "")));
  }
}
