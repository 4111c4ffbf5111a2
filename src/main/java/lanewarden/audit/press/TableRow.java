package lanewarden.audit.press;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.press.Style.Sides;

/** A row of a table: never split, unless no page is high enough for it. */
final class TableRow implements Block {
  private static final float ROUNDING = 0.01f;

  private final Table table;
  private final List<TableCell> cells;
  private final boolean heads;
  private float[] columns = {};

  /**
   * @param heads whether it is the row of headings
   */
  TableRow(Table table, List<TableCell> cells, boolean heads) {
    this.table = table;
    this.cells = List.copyOf(cells);
    this.heads = heads;
  }

  @Override
  public float above() {
    return 0;
  }

  @Override
  public float below() {
    return 0;
  }

  @Override
  public void fit(float width) throws IOException {
    columns = table.columns(width, cells);
    if (columns.length != cells.size()) {
      throw new IllegalStateException(
          "A row has " + cells.size() + " cells in a table of " + columns.length + " columns.");
    }
    for (int i = 0; i < columns.length; i++) {
      Sides inset = cells.get(i).style().inset();
      cells.get(i).content().fit(columns[i] - inset.left() - inset.right());
    }
  }

  @Override
  public float height() {
    float height = 0;
    for (TableCell cell : cells) {
      height = Math.max(height, cell.height());
    }
    return height;
  }

  @Override
  public float least() {
    return height();
  }

  @Override
  public boolean withNext() {
    return heads;
  }

  @Override
  public Optional<Block> again() {
    return heads ? Optional.empty() : table.headings();
  }

  @Override
  public Optional<Block> draw(Sheet sheet, float x, float y, float room) throws IOException {
    float height = Math.min(height(), room);
    List<TableCell> rest = new ArrayList<>();
    boolean ends = true;
    float left = x;
    for (int i = 0; i < columns.length; i++) {
      TableCell cell = cells.get(i);
      Sides inset = cell.style().inset();
      float down = cell.style().bottom() ? Math.max(height - cell.height(), 0) : 0;
      Optional<Block> over =
          cell.content()
              .draw(
                  sheet,
                  left + inset.left(),
                  y + down + inset.top(),
                  height - down - inset.top() - inset.bottom() + ROUNDING);
      ends &= over.isEmpty();
      rest.add(new TableCell(cell.style(), over.map(Stack.class::cast).orElseGet(Stack::empty)));
      sheet.frame(
          cell.style().border(),
          cell.style().borderColour(),
          left,
          y,
          left + columns[i],
          y + height);
      left += columns[i];
    }
    return ends ? Optional.empty() : Optional.of(left(rest));
  }

  private TableRow left(List<TableCell> rest) {
    TableRow row = new TableRow(table, rest, heads);
    row.columns = columns;
    return row;
  }
}
