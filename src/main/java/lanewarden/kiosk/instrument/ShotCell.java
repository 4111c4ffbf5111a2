package lanewarden.kiosk.instrument;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.RowCell;

/** One shot of a verification: its figures, and what they come from. */
final class ShotCell extends RowCell<ChartPage.Shot> {
  private final Mark mark = new Mark();
  private final Label figures = new Label();
  private final Label words = new Label();

  ShotCell() {
    super("wire-row");
    figures.getStyleClass().add("shot-figures");
    PanelFrame.wrap(figures, words);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    lay(mark, figures, words);
  }

  @Override
  protected String show(ChartPage.Shot shot) {
    mark.show(shot.sign());
    figures.setText(shot.figures());
    words.setText(shot.words());
    return shot.figures() + ". " + shot.words();
  }
}
