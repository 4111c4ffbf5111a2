package lanewarden.kiosk.setups;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.Texts;

/** A set-up in the list: its place, its name, and its mean. */
final class SetUpCell extends RowCell<SetUpRow> {
  private final Texts texts;
  private final Label place = new Label();
  private final Label name = new Label();
  private final Label figures = new Label();

  SetUpCell(Texts texts) {
    super("docket-row");
    this.texts = texts;
    place.getStyleClass().add("setups-place");
    name.getStyleClass().add("docket-title");
    PanelFrame.wrap(name, figures);
    VBox words = new VBox(name, figures);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    lay(place, words);
  }

  @Override
  protected String show(SetUpRow row) {
    place.setText(row.line().place());
    name.setText(row.line().setUp());
    figures.setText(
        row.leftOut().isEmpty()
            ? texts.of(
                "setups.row",
                texts.number(row.line().mean()),
                texts.number(row.line().reach()),
                row.line().shots())
            : texts.of(
                "setups.row.left-out",
                texts.number(row.line().mean()),
                texts.number(row.line().reach()),
                row.line().shots(),
                row.leftOut().size()));
    return texts.of("setups.row.spoken", place.getText(), name.getText(), figures.getText());
  }
}
