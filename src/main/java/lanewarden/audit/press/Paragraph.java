package lanewarden.audit.press;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.press.LineBreaker.Line;
import lanewarden.audit.press.Style.Sides;
import org.jspecify.annotations.Nullable;

/** Words in lines, with a border where its style has one, and a mark before it in a list. */
final class Paragraph implements Block {
  /** Of a paragraph that is split, two lines at least stay together. */
  private static final int TOGETHER = 2;

  private static final float STRIKE = 0.3f;
  private static final float LABEL_GAP = 0.2f;
  private static final float STRIKE_WIDTH = 0.06f;

  private final LineBreaker breaker;
  private final Style style;
  private final Tag tag;
  private final float indent;
  private final @Nullable Label label;
  private final List<Run> runs;
  private final boolean begins;
  private List<Line> lines;
  private float width;

  /**
   * What stands before an item of a list.
   *
   * @param text a bullet or a number
   */
  record Label(String text, Tag tag) {}

  /**
   * @param style its letters, and the box around it
   * @param indent how far its box begins from the left
   */
  Paragraph(
      LineBreaker breaker,
      Style style,
      Tag tag,
      float indent,
      @Nullable Label label,
      List<Run> runs) {
    this(breaker, style, tag, indent, label, runs, true, List.of(), 0);
  }

  private Paragraph(
      LineBreaker breaker,
      Style style,
      Tag tag,
      float indent,
      @Nullable Label label,
      List<Run> runs,
      boolean begins,
      List<Line> lines,
      float width) {
    this.breaker = breaker;
    this.style = style;
    this.tag = tag;
    this.indent = indent;
    this.label = label;
    this.runs = List.copyOf(runs);
    this.begins = begins;
    this.lines = lines;
    this.width = width;
  }

  /** What is left of it from this line on. */
  private Paragraph from(int line) {
    return new Paragraph(
        breaker, style, tag, indent, null, runs, false, lines.subList(line, lines.size()), width);
  }

  @Override
  public float above() {
    return begins ? style.margin().top() : 0;
  }

  @Override
  public float below() {
    return style.margin().bottom();
  }

  @Override
  public void fit(float newWidth) throws IOException {
    width = newWidth;
    Sides inset = style.inset();
    lines = breaker.lines(runs, width - indent - inset.left() - inset.right());
  }

  private float top() {
    return begins ? style.inset().top() : 0;
  }

  private float high(int count) {
    return count * style.letters().lineHeight();
  }

  @Override
  public float height() {
    return top() + high(lines.size()) + style.inset().bottom();
  }

  @Override
  public float least() {
    return lines.size() <= TOGETHER + 1 ? height() : top() + high(TOGETHER);
  }

  @Override
  public boolean withNext() {
    return style.withNext();
  }

  @Override
  public Optional<Block> draw(Sheet sheet, float x, float y, float room) throws IOException {
    int count = height() <= room ? lines.size() : fitting(room);
    if (count <= 0) {
      return Optional.of(this);
    }
    boolean ends = count == lines.size();
    Sides inset = style.inset();
    float left = x + indent + inset.left();
    float at = y + top();
    float rise = breaker.faces().of(style.letters().cut()).rise(style.letters());
    if (label != null) {
      draw(label, sheet, left, at + rise);
    }
    for (Line line : lines.subList(0, count)) {
      float rest = x + width - inset.right() - left - line.width();
      draw(line, sheet, style.letters().right() ? left + rest : left, at + rise);
      at += style.letters().lineHeight();
    }
    frame(sheet, x + indent, y, ends ? at + inset.bottom() : at, ends);
    return ends ? Optional.empty() : Optional.of(from(count));
  }

  /** How many lines this room takes; the last one is not left alone. */
  private int fitting(float room) {
    int count = (int) ((room - top()) / style.letters().lineHeight() + 0.001f);
    return Math.min(
        count, lines.size() > TOGETHER + 1 ? lines.size() - TOGETHER : lines.size() - 1);
  }

  private void frame(Sheet sheet, float x, float y, float bottom, boolean ends) {
    Sides border = style.border();
    Sides drawn =
        new Sides(
            begins ? border.top() : 0, border.right(), ends ? border.bottom() : 0, border.left());
    sheet.frame(drawn, style.borderColour(), x, y, x - indent + width, bottom);
  }

  private void draw(Label mark, Sheet sheet, float left, float base) throws IOException {
    Lettering letters = style.letters();
    String text = mark.text() + " ";
    sheet.mark(mark.tag());
    float before = breaker.width(text, letters) + LABEL_GAP * letters.size();
    sheet.text(text, letters, left - before, base);
  }

  private void draw(Line line, Sheet sheet, float left, float base) throws IOException {
    float x = left;
    for (Run run : line.runs()) {
      sheet.mark(tag);
      sheet.text(run.text(), run.letters(), x, base);
      float wide = breaker.width(run.text(), run.letters());
      if (run.letters().struck()) {
        float size = run.letters().size();
        float y = base - STRIKE * size;
        sheet.rule(x, y, x + wide, y, STRIKE_WIDTH * size, run.letters().colour());
      }
      x += wide;
    }
  }
}
