package lanewarden.kiosk.protest;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import org.jspecify.annotations.Nullable;

/** One line of the docket: what and who, the rest, and what waits. */
final class DocketCell extends ListCell<DocketLine> {
  private final Mark mark = new Mark();
  private final Label title = new Label();
  private final Label words = new Label();
  private final Label state = new Label();
  private final HBox row;

  DocketCell() {
    title.getStyleClass().add("docket-title");
    state.getStyleClass().add("docket-state");
    for (Label label : new Label[] {title, words, state}) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    VBox said = new VBox(title, words, state);
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    row = new HBox(mark, said);
    row.getStyleClass().add("docket-row");
    getStyleClass().add("wire-cell");
    // Long lines wrap within the list instead of widening it
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(@Nullable DocketLine line, boolean empty) {
    super.updateItem(line, empty);
    if (empty || line == null) {
      setGraphic(null);
      setAccessibleText("");
      return;
    }
    mark.show(line.sign());
    title.setText(line.title());
    words.setText(line.words());
    state.setText(line.state());
    setAccessibleText(line.spoken());
    setGraphic(row);
  }
}
