package lanewarden.kiosk.people;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.KeyOffice;
import org.jspecify.annotations.Nullable;

/** One key: whose it is, and how it stands. */
final class PersonCell extends ListCell<KeyOffice.Official> {
  private final Texts texts;
  private final Mark mark = new Mark();
  private final Label name = new Label();
  private final Label state = new Label();
  private final HBox row;

  PersonCell(Texts texts) {
    this.texts = texts;
    name.getStyleClass().add("docket-title");
    for (Label label : new Label[] {name, state}) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    VBox said = new VBox(name, state);
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    row = new HBox(mark, said);
    row.getStyleClass().add("docket-row");
    getStyleClass().add("wire-cell");
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(KeyOffice.@Nullable Official one, boolean empty) {
    super.updateItem(one, empty);
    if (empty || one == null) {
      setGraphic(null);
      setAccessibleText("");
      return;
    }
    mark.show(one.suspension().isEmpty() ? Sign.WITHIN : Sign.NOT_ADMITTED);
    name.setText(texts.of(one.judge() ? "people.judge" : "people.official", one.name()));
    state.setText(
        one.suspension()
            .map(words -> texts.of("people.suspended", words))
            .orElseGet(() -> texts.of("people.standing")));
    setAccessibleText(name.getText() + ". " + state.getText());
    setGraphic(row);
  }
}
