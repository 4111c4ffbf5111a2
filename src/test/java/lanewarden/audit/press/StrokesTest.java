package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** SVG paths (SVG 1.1, 8.3) as path operators of PDF (ISO 32000-1, 8.5), both from memory. */
class StrokesTest {
  private static String path(String d, Map<String, String> paint) {
    Strokes strokes = new Strokes();
    strokes.path(name -> name.equals("d") ? d : paint.getOrDefault(name, ""));
    return strokes.inPdf().strip();
  }

  @Test
  void whatSaysNothingIsFilledBlack() {
    assertEquals(
        "0.00 0.00 0.00 rg 1.00 2.00 m 3.00 2.00 l 3.00 4.00 l h f", path("M1 2h2v2z", Map.of()));
  }

  @Test
  void linesGoWhereTheCommandsSay() {
    assertEquals(
        "1.00 0.00 0.00 RG 0.50 w [6 3] 0 d 0.00 0.00 m -1.50 2.00 l 4.00 2.00 l 4.00 9.00 l S",
        path(
            "M0 0L-1.5 2H4V9",
            Map.of(
                "fill",
                "none",
                "stroke",
                "#ff0000",
                "stroke-width",
                "0.5",
                "stroke-dasharray",
                "6 3")));
  }

  /** A quadratic curve is the cubic one whose handles lie two thirds on the way to its own. */
  @Test
  void aQuadraticCurveBecomesACubicOne() {
    assertEquals(
        "0.00 0.00 0.00 rg 0.00 0.00 m 2.00 2.00 4.00 2.00 6.00 0.00 c f",
        path("M0 0Q3 3 6 0", Map.of()));
  }

  @Test
  void aCommandThatIsNotKnownIsRefused() {
    assertThrows(IllegalStateException.class, () -> path("M0 0A1 1 0 0 0 2 2", Map.of()));
  }
}
