package lanewarden.kiosk.instrument;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.WrappedWords;

/** One thing that came over the wire: what became of it, and its bytes. */
final class WireCell extends RowCell<WirePage.Line> {
  private final Mark mark = new Mark();
  private final Label time = new Label();
  private final Label word = new Label();
  private final Label speed = new Label();
  private final Label bytes = new Label();
  private final Label words = new Label();
  private final VBox said = new VBox();

  WireCell() {
    super("wire-row");
    time.getStyleClass().add("wire-time");
    word.getStyleClass().add("wire-word");
    speed.getStyleClass().add("wire-speed");
    bytes.getStyleClass().add("raw");
    for (Label label : new Label[] {bytes, words}) {
      WrappedWords.in(label);
      label.setMinHeight(USE_PREF_SIZE);
    }
    for (Label label : new Label[] {time, word, speed}) {
      label.setMinWidth(USE_PREF_SIZE);
    }
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    lay(mark, time, word, said);
  }

  @Override
  protected String show(WirePage.Line line) {
    mark.show(line.sign());
    time.setText(line.time());
    word.setText(line.word());
    said.getChildren().clear();
    add(speed, line.speed());
    add(bytes, line.bytes());
    add(words, line.words());
    return line.spoken();
  }

  private void add(Label label, String text) {
    if (!text.isBlank()) {
      label.setText(text);
      said.getChildren().add(label);
    }
  }
}
