package lanewarden.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.written.TomlScan.Span;

/**
 * A list of texts rewritten item by item, so that the comments and line ends inside it stay: an
 * item that stays is not touched, a changed one is replaced where it stands, a new one gets a line
 * of its own and one that goes takes its line with it. For one thread.
 */
final class ListRewriting {
  private final String old;
  private final String lineEnd;
  private final List<Span> spans;
  private final List<?> was;
  private final List<String> will;
  private final boolean anItemALine;
  private final StringBuilder written = new StringBuilder();
  private int copied;
  private boolean fits = true;

  private ListRewriting(String old, List<?> was, List<String> will) {
    this.old = old;
    this.lineEnd = old.contains("\r\n") ? "\r\n" : "\n";
    this.spans = new TomlScan(old).items(0);
    this.anItemALine = !spans.isEmpty() && spans.stream().allMatch(this::hasItsLine);
    this.was = was;
    this.will = will;
  }

  /**
   * The list as it is to be written.
   *
   * @param old the list as it is written, from bracket to bracket
   * @param was its items
   * @param will the items wanted
   * @return empty where comments stand in the list that cannot be kept beside their items
   */
  static Optional<String> of(String old, List<?> was, List<String> will) {
    ListRewriting rewriting = new ListRewriting(old, was, will);
    String kept = rewriting.written();
    if (rewriting.fits) {
      return Optional.of(kept);
    }
    return rewriting.hasComment() ? Optional.empty() : Optional.of(Literal.texts(will).toml());
  }

  private String written() {
    int[][] common = common();
    List<String> come = new ArrayList<>();
    int i = 0;
    int j = 0;
    int gone = 0;
    while (i < was.size() || j < will.size()) {
      if (i < was.size() && j < will.size() && was.get(i).equals(will.get(j))) {
        change(i, gone, come);
        gone = 0;
        i++;
        j++;
      } else if (j == will.size() || (i < was.size() && common[i + 1][j] >= common[i][j + 1])) {
        gone++;
        i++;
      } else {
        come.add(new Literal.Text(will.get(j++)).toml());
      }
    }
    change(i, gone, come);
    return written.append(old, copied, old.length()).toString();
  }

  /** Puts the new items in the place of the last ones before {@code end} that go. */
  private void change(int end, int gone, List<String> come) {
    int first = end - gone;
    int pairs = Math.min(gone, come.size());
    for (int i = first; i < first + pairs; i++) {
      replace(spans.get(i).from(), spans.get(i).to(), come.get(i - first));
    }
    if (gone != come.size() && !anItemALine) {
      fits = false;
    } else {
      for (int i = first + pairs; i < end; i++) {
        replace(lineStart(spans.get(i)), lineStop(spans.get(i)), "");
      }
      putAfter(first + pairs - 1, come.subList(pairs, come.size()));
    }
    come.clear();
  }

  private void putAfter(int item, List<String> come) {
    if (come.isEmpty()) {
      return;
    }
    int line = old.indexOf('\n') + 1;
    if (item >= 0) {
      Span above = spans.get(item);
      if (!old.substring(above.to(), lineStop(above)).stripLeading().startsWith(",")) {
        replace(above.to(), above.to(), ",");
      }
      line = lineStop(above);
    }
    Span like = spans.get(Math.max(0, item));
    String indent = old.substring(lineStart(like), like.from());
    StringBuilder lines = new StringBuilder();
    come.forEach(text -> lines.append(indent).append(text).append(',').append(lineEnd));
    replace(line, line, lines.toString());
  }

  private void replace(int from, int to, String by) {
    written.append(old, copied, Math.max(copied, from)).append(by);
    copied = Math.max(copied, to);
  }

  /** How many items of was, from i on, also stand in will, from j on, in the same order. */
  private int[][] common() {
    int[][] common = new int[was.size() + 1][will.size() + 1];
    for (int i = was.size() - 1; i >= 0; i--) {
      for (int j = will.size() - 1; j >= 0; j--) {
        common[i][j] =
            was.get(i).equals(will.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    return common;
  }

  private boolean hasItsLine(Span item) {
    boolean last = item.equals(spans.get(spans.size() - 1));
    String comma = last ? ",?" : ",";
    return lineStop(item) <= old.lastIndexOf(']')
        && old.substring(lineStart(item), item.from()).isBlank()
        && old.substring(item.to(), lineStop(item))
            .matches("[ \\t]*" + comma + "[ \\t]*(#[^\\n]*)?\\r?\\n");
  }

  private boolean hasComment() {
    int at = 1;
    for (Span item : spans) {
      if (old.substring(at, item.from()).contains("#")) {
        return true;
      }
      at = item.to();
    }
    return old.substring(at).contains("#");
  }

  private int lineStart(Span item) {
    return old.lastIndexOf('\n', item.from()) + 1;
  }

  private int lineStop(Span item) {
    return old.indexOf('\n', item.to()) + 1;
  }
}
