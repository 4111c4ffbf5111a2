package lanewarden.audit.press;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Breaks words into lines: where {@link WordBreaks} allows it, and inside a word only where it
 * alone is wider than a line.
 *
 * <p>Every line ends with a space, unless a word goes on: whoever has it read aloud must not hear
 * two words as one. Owned by one thread.
 */
final class LineBreaker {
  private final PrintedFaces faces;
  private final WordBreaks breaks = new WordBreaks();

  LineBreaker(PrintedFaces faces) {
    this.faces = faces;
  }

  /**
   * A line.
   *
   * @param width in points, without the spaces at its end
   */
  record Line(List<Run> runs, float width) {}

  /** The faces it measures with. */
  PrintedFaces faces() {
    return faces;
  }

  /** How wide a text is on one line, in points. */
  float width(String text, Lettering letters) throws IOException {
    double wide = 0;
    for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
      wide += faces.of(letters.cut()).width(text.codePointAt(i));
    }
    return (float) wide * letters.size();
  }

  /** The lines of these words, each at most this wide. */
  List<Line> lines(List<Run> runs, float width) throws IOException {
    return new Measured(runs, faces).lines(breaks, width);
  }

  /** Words one after the other, and how far each character reaches. */
  private static final class Measured {
    private final List<Run> runs;
    private final String text;
    private final float[] reach;
    private final List<Line> lines = new ArrayList<>();

    Measured(List<Run> runs, PrintedFaces faces) throws IOException {
      this.runs = runs;
      StringBuilder all = new StringBuilder();
      runs.forEach(run -> all.append(run.text()));
      text = all.toString();
      reach = new float[text.length() + 1];
      int at = 0;
      for (Run run : runs) {
        PrintedFace face = faces.of(run.letters().cut());
        for (int i = 0; i < run.text().length(); ) {
          int character = run.text().codePointAt(i);
          int length = Character.charCount(character);
          double wide = character == '\n' ? 0 : face.width(character) * run.letters().size();
          reach[at + length] = (float) (reach[at] + wide);
          if (length > 1) {
            reach[at + 1] = reach[at];
          }
          at += length;
          i += length;
        }
      }
    }

    List<Line> lines(WordBreaks breaks, float width) {
      int from = 0;
      while (from <= text.length()) {
        int feed = text.indexOf('\n', from);
        int end = feed < 0 ? text.length() : feed;
        paragraph(breaks, from, end, width);
        from = end + 1;
      }
      return lines;
    }

    private void paragraph(WordBreaks breaks, int from, int end, float width) {
      breaks.setText(text.substring(from, end));
      int begin = from;
      int fits = from;
      for (int at = breaks.next(); at >= 0; at = breaks.next()) {
        int next = from + at;
        if (wide(begin, next) > width && fits > begin) {
          add(begin, fits);
          begin = fits;
        }
        while (wide(begin, next) > width) {
          int cut = cut(begin, next, width);
          add(begin, cut);
          begin = cut;
        }
        fits = next;
      }
      add(begin, end);
    }

    /** As much of a word as has room: one character at least. */
    private int cut(int begin, int end, float width) {
      int cut = text.offsetByCodePoints(begin, 1);
      while (cut < end && reach[text.offsetByCodePoints(cut, 1)] - reach[begin] <= width) {
        cut = text.offsetByCodePoints(cut, 1);
      }
      return cut;
    }

    /** How wide the text between is, spaces at its end left out. */
    private float wide(int begin, int end) {
      int last = end;
      while (last > begin && text.charAt(last - 1) == ' ') {
        last--;
      }
      return reach[last] - reach[begin];
    }

    private void add(int begin, int end) {
      List<Run> line = new ArrayList<>();
      int at = 0;
      for (Run run : runs) {
        int from = Math.max(begin - at, 0);
        int to = Math.min(end - at, run.text().length());
        if (from < to) {
          line.add(new Run(run.text().substring(from, to), run.letters()));
        }
        at += run.text().length();
      }
      boolean ends = end == text.length() || text.charAt(end) == '\n';
      if (!line.isEmpty() && ends) {
        line.add(new Run(" ", line.get(line.size() - 1).letters()));
      }
      lines.add(new Line(line, wide(begin, end)));
    }
  }
}
