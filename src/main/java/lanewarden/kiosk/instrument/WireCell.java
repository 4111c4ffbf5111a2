package lanewarden.kiosk.instrument;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import org.jspecify.annotations.Nullable;

/** One thing that came over the wire: what became of it, and its bytes. */
final class WireCell extends ListCell<WirePage.Line> {
  private final Mark mark = new Mark();
  private final Label time = new Label();
  private final Label word = new Label();
  private final Label speed = new Label();
  private final Label bytes = new Label();
  private final Label words = new Label();
  private final VBox said = new VBox();
  private final HBox row = new HBox(mark, time, word, said);

  WireCell() {
    time.getStyleClass().add("wire-time");
    word.getStyleClass().add("wire-word");
    speed.getStyleClass().add("wire-speed");
    bytes.getStyleClass().add("raw");
    for (Label label : new Label[] {bytes, words}) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    for (Label label : new Label[] {time, word, speed}) {
      label.setMinWidth(USE_PREF_SIZE);
    }
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    row.getStyleClass().add("wire-row");
    getStyleClass().add("wire-cell");
    // Long lines wrap within the list instead of widening it
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(WirePage.@Nullable Line line, boolean empty) {
    super.updateItem(line, empty);
    if (empty || line == null) {
      setGraphic(null);
      setAccessibleText("");
      return;
    }
    mark.show(line.sign());
    time.setText(line.time());
    word.setText(line.word());
    said.getChildren().clear();
    add(speed, line.speed());
    add(bytes, line.bytes());
    add(words, line.words());
    setAccessibleText(line.spoken());
    setGraphic(row);
  }

  private void add(Label label, String text) {
    if (!text.isBlank()) {
      label.setText(text);
      said.getChildren().add(label);
    }
  }
}
