package lanewarden.kiosk.look;

import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/**
 * A cell of a list that is one row. Long lines wrap within the list instead of widening it.
 *
 * @param <T> what a row shows
 */
public abstract class RowCell<T> extends ListCell<T> {
  private final HBox row = new HBox();

  /**
   * @param style class of the stylesheet for the row
   */
  protected RowCell(String style) {
    row.getStyleClass().add(style);
    getStyleClass().add("wire-cell");
    setPrefWidth(0);
  }

  /** Puts parts into the row, from left to right; called once. */
  protected final void lay(Node... parts) {
    row.getChildren().addAll(parts);
  }

  /**
   * Writes an item into the parts.
   *
   * @return the row as it is read out
   */
  protected abstract String show(T item);

  @Override
  protected final void updateItem(@Nullable T item, boolean empty) {
    super.updateItem(item, empty);
    if (empty || item == null) {
      setGraphic(null);
      setAccessibleText("");
      return;
    }
    setAccessibleText(show(item));
    setGraphic(row);
  }
}
