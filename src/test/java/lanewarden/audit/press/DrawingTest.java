package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingTest {
  private static final double SIZE = 9.2;

  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 20, 60, 120, 500})
  void lineOfTextIsCutToItsRoomWithAnEllipsis(double width) throws Exception {
    String text = "The bow with the long name that nobody would print";
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      Drawing drawing = new Drawing(face, 680, 260);
      String shown = drawing.fitting(text, SIZE, width);
      if (drawing.widthOf(text, SIZE) <= width) {
        assertEquals(text, shown);
        return;
      }
      assertTrue(shown.endsWith("…"), shown);
      String kept = shown.substring(0, shown.length() - 1);
      assertTrue(text.startsWith(kept), shown);
      assertTrue(kept.isEmpty() || drawing.widthOf(shown, SIZE) <= width, shown);
      String longer = text.substring(0, kept.length() + 1) + "…";
      assertTrue(drawing.widthOf(longer, SIZE) > width, longer);
    }
  }

  @Test
  void characterOfTwoUnitsIsNotCutInHalf() throws Exception {
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      Drawing drawing = new Drawing(face, 680, 260);
      String shown = drawing.fitting("\ud83c\udff9".repeat(40), SIZE, 60);
      assertTrue(shown.matches("(\ud83c\udff9)+…"), shown);
    }
  }
}
