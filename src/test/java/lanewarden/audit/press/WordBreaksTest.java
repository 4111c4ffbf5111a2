package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordBreaksTest {
  private static List<String> parts(String text) {
    WordBreaks breaks = new WordBreaks();
    breaks.setText(text);
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int at = breaks.next(); at >= 0; at = breaks.next()) {
      parts.add(text.substring(from, at));
      from = at;
    }
    return parts;
  }

  @Test
  void aFigureKeepsItsUnit() {
    assertEquals(
        List.of("limit ", "300 ft/s ", "plus ", "3 % ", "= ", "309 ft/s, ", "so"),
        parts("limit 300 ft/s plus 3 % = 309 ft/s, so"));
  }

  @Test
  void otherWordsMayPart() {
    assertEquals(List.of("5 ", "grains ", "of  ", "sand"), parts("5 grains of  sand"));
  }

  @Test
  void emptyTextHasNoBreak() {
    assertEquals(List.of(), parts(""));
  }
}
