package lanewarden.kiosk.people;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.station.KeyOffice;

/** One key: whose it is, how it stands, and its thumbprint. */
final class PersonCell extends RowCell<KeyOffice.Official> {
  private final Texts texts;
  private final Mark mark = new Mark();
  private final Label name = new Label();
  private final Label state = new Label();
  private final Label thumbprint = new Label();

  PersonCell(Texts texts) {
    super("docket-row");
    this.texts = texts;
    name.getStyleClass().add("docket-title");
    for (Label label : new Label[] {name, state, thumbprint}) {
      WrappedWords.in(label);
      label.setMinHeight(USE_PREF_SIZE);
    }
    VBox said = new VBox(name, state, thumbprint);
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    lay(mark, said);
  }

  @Override
  protected String show(KeyOffice.Official one) {
    mark.show(one.suspension().isEmpty() ? Sign.WITHIN : Sign.NOT_ADMITTED);
    name.setText(texts.of(one.judge() ? "people.judge" : "people.official", one.name()));
    state.setText(
        one.suspension()
            .map(since -> texts.of("people.suspended", since.entry(), since.reason()))
            .orElseGet(() -> texts.of("people.standing")));
    thumbprint.setText(texts.of("people.thumbprint", one.thumbprint()));
    return String.join(". ", name.getText(), state.getText(), thumbprint.getText());
  }
}
