package lanewarden.audit.press;

import java.util.List;
import java.util.Optional;
import lanewarden.audit.press.Style.Sides;
import lanewarden.audit.press.Style.Width;

/**
 * What the rows of a table have in common: its columns, and the row of headings that stands on top
 * of every page.
 *
 * <p>A table's rows are laid out and drawn one by one, so that a long one needs no more memory than
 * a short one. Owned by one thread.
 */
final class Table {
  private final Style style;
  private float[] columns = {};
  private Optional<Block> headings = Optional.empty();

  Table(Style style) {
    this.style = style;
  }

  /** Its columns in points, left to right, as the cells of its first row ask for them. */
  float[] columns(float room, List<TableCell> first) {
    if (columns.length == 0) {
      columns = shared(style.width().isOpen() ? room : style.width().of(room), first);
    }
    return columns.clone();
  }

  /** Columns that ask for no width share what is left. */
  private static float[] shared(float whole, List<TableCell> cells) {
    float[] widths = new float[cells.size()];
    float left = whole;
    int open = 0;
    for (int i = 0; i < widths.length; i++) {
      Width asked = cells.get(i).style().width();
      Sides padding = cells.get(i).style().inset();
      if (asked.isOpen()) {
        open++;
      } else {
        widths[i] = asked.of(whole) + (asked.share() ? 0 : padding.left() + padding.right());
        left -= widths[i];
      }
    }
    for (int i = 0; i < widths.length; i++) {
      if (cells.get(i).style().width().isOpen()) {
        widths[i] = left / open;
      }
    }
    return widths;
  }

  /** The row that is said again on every page. */
  Optional<Block> headings() {
    return headings;
  }

  void headedBy(TableRow row) {
    headings = Optional.of(row);
  }

  /** The white around the table. */
  Sides margin() {
    return style.margin();
  }
}
