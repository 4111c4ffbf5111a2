package lanewarden.kiosk.start;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Reach;
import lanewarden.kiosk.look.RowCell;

/**
 * The roster that comes of a list, every line of it under the titles of its columns: turned by PgUp
 * and PgDn from anywhere, and gone through with the arrow keys where it has the focus.
 */
final class RosterPreview extends VBox {
  /** Of a column, in letters, so that none is squeezed out by a long one beside it. */
  private static final int NARROWEST = 4;

  private static final int WIDEST = 24;

  private final GridPane titles = new GridPane();
  private final ListView<List<String>> rows = new ListView<>();
  private List<ColumnConstraints> shares = List.of();

  /**
   * @param name as it is read out
   */
  RosterPreview(String name) {
    titles.getStyleClass().add("roster-row");
    titles.setId("roster-titles");
    rows.setId("roster-rows");
    rows.setAccessibleText(name);
    rows.setCellFactory(all -> new Cell());
    getStyleClass().add("roster-preview");
    getChildren().addAll(titles, rows);
    show(List.of(), List.of());
  }

  /** Shows these lines, or nothing where there are no titles. */
  void show(List<String> named, List<List<String>> lines) {
    setVisible(!named.isEmpty());
    setManaged(isVisible());
    shares =
        IntStream.range(0, named.size())
            .map(column -> letters(column, named, lines))
            .mapToObj(RosterPreview::share)
            .toList();
    fill(titles, named, "field-title");
    if (!lines.equals(rows.getItems())) {
      rows.getItems().setAll(lines);
      rows.scrollTo(0);
    }
    rows.refresh();
  }

  private static int letters(int column, List<String> named, List<List<String>> lines) {
    int longest =
        lines.stream()
            .mapToInt(line -> line.get(column).length())
            .reduce(named.get(column).length(), Math::max);
    return Math.max(NARROWEST, Math.min(WIDEST, longest));
  }

  /** More than there is in all: the columns then have what there is in these proportions. */
  private static ColumnConstraints share(int letters) {
    ColumnConstraints share = new ColumnConstraints();
    share.setPercentWidth(letters * 100.0);
    return share;
  }

  private void fill(GridPane row, List<String> cells, String style) {
    row.getColumnConstraints().setAll(shares);
    row.getChildren().clear();
    for (int column = 0; column < cells.size(); column++) {
      Label cell = new Label(cells.get(column));
      cell.getStyleClass().add(style);
      PanelFrame.wrap(cell);
      row.add(cell, column, 0);
    }
  }

  /** Turns the lines by PgUp and PgDn; any other key is not its own. */
  boolean press(KeyCode code) {
    if (!isVisible() || (code != KeyCode.PAGE_DOWN && code != KeyCode.PAGE_UP)) {
      return false;
    }
    Reach.bring(rows);
    if (rows.lookup(".virtual-flow") instanceof VirtualFlow<?> flow) {
      IndexedCell<?> first = flow.getFirstVisibleCell();
      IndexedCell<?> last = flow.getLastVisibleCell();
      if (first != null && last != null) {
        int page = Math.max(1, last.getIndex() - first.getIndex());
        rows.scrollTo(Math.max(0, first.getIndex() + (code == KeyCode.PAGE_DOWN ? page : -page)));
      }
    }
    return true;
  }

  /** One line. */
  private final class Cell extends RowCell<List<String>> {
    private final GridPane row = new GridPane();

    Cell() {
      super("roster-line");
      row.getStyleClass().add("roster-row");
      HBox.setHgrow(row, Priority.ALWAYS);
      lay(row);
    }

    @Override
    protected String show(List<String> line) {
      fill(row, line, "roster-cell");
      return String.join(", ", line);
    }
  }
}
