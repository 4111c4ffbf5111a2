package lanewarden.audit.press;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lanewarden.audit.press.LineBreaker.Line;

/**
 * Draws what stands on every page above and below the text: the words that are the same on all of
 * them, and the number of the page.
 *
 * @param running the words by their place: {@code header left} and so on
 */
record Margins(LineBreaker breaker, Map<String, List<Run>> running, Paper paper) {
  private static final float LEFT_SHARE = 0.55f;

  /** Draws them on one page; nothing where the document has none. */
  void draw(Sheet sheet, int number, int pages) throws IOException {
    if (running.isEmpty()) {
      return;
    }
    sheet.repeat(
        () -> {
          float foot = paper.height() - paper.edges().bottom() / 2;
          draw(sheet, words("header left"), paper.edges().top() / 2, false);
          draw(sheet, words("header right"), paper.edges().top() / 2, true);
          draw(sheet, words("footer left"), foot, false);
          Lettering letters = words("footer left").get(0).letters();
          draw(sheet, List.of(new Run("Page " + number + " of " + pages, letters)), foot, true);
        });
  }

  private List<Run> words(String place) {
    return Objects.requireNonNull(running.get(place), place + " is missing on the page");
  }

  private void draw(Sheet sheet, List<Run> words, float middle, boolean right) throws IOException {
    float whole = paper.textWidth();
    List<Line> lines = breaker.lines(words, whole * (right ? 1 - LEFT_SHARE : LEFT_SHARE));
    float top = middle;
    for (Line line : lines) {
      top -= line.runs().get(0).letters().lineHeight() / 2;
    }
    for (Line line : lines) {
      Lettering letters = line.runs().get(0).letters();
      float x = right ? paper.edges().left() + whole - line.width() : paper.edges().left();
      float base = top + breaker.faces().of(letters.cut()).rise(letters);
      for (Run run : line.runs()) {
        sheet.text(run.text(), run.letters(), x, base);
        x += breaker.width(run.text(), run.letters());
      }
      top += letters.lineHeight();
    }
  }
}
