package lanewarden.audit.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Gathers the words of a paragraph as HTML has it: white space is drawn together to one space, and
 * there is none at its ends. Owned by one thread.
 */
final class Words {
  private static final String TAB = " ".repeat(8);

  private final List<Run> runs = new ArrayList<>();

  /** Whether the last character is white space, or would be the first. */
  private boolean blank = true;

  void add(String text, Lettering letters) {
    if (letters.kept()) {
      String lines = text.replace("\r\n", "\n").replace('\r', '\n');
      runs.add(new Run(lines.replace("\t", TAB), letters));
      return;
    }
    StringBuilder drawn = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean white = c == ' ' || c == '\n' || c == '\t' || c == '\r';
      if (!white) {
        drawn.append(c);
      } else if (!blank) {
        drawn.append(' ');
      }
      blank = white;
    }
    if (drawn.length() > 0) {
      runs.add(new Run(drawn.toString(), letters));
    }
  }

  /** Ends a line. */
  void feed(Lettering letters) {
    runs.add(new Run("\n", letters));
    blank = true;
  }

  /** The words so far; the next are another paragraph's. */
  List<Run> take() {
    List<Run> taken = new ArrayList<>(runs);
    if (!taken.isEmpty()) {
      Run last = taken.remove(taken.size() - 1);
      String text = last.text().stripTrailing();
      if (!text.isEmpty()) {
        taken.add(new Run(text, last.letters()));
      }
    }
    runs.clear();
    blank = true;
    return taken;
  }
}
