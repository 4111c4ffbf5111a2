package lanewarden.kiosk.protest;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.WrappedWords;

/** One line of the docket: what and who, the rest, and what waits. */
final class DocketCell extends RowCell<DocketLine> {
  private final Mark mark = new Mark();
  private final Label title = new Label();
  private final Label words = new Label();
  private final Label state = new Label();

  DocketCell() {
    super("docket-row");
    title.getStyleClass().add("docket-title");
    state.getStyleClass().add("docket-state");
    for (Label label : new Label[] {title, words, state}) {
      WrappedWords.in(label);
      label.setMinHeight(USE_PREF_SIZE);
    }
    VBox said = new VBox(title, words, state);
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    lay(mark, said);
  }

  @Override
  protected String show(DocketLine line) {
    mark.show(line.sign());
    title.setText(line.title());
    words.setText(line.words());
    state.setText(line.state());
    return line.spoken();
  }
}
