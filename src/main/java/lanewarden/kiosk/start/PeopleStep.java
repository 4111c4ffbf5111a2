package lanewarden.kiosk.start;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;

/** The organizer, and those who may sign at the station. */
final class PeopleStep implements StepPane {
  private final NewEventViewModel model;
  private final Texts texts;
  private final VBox rows = new VBox();
  private final VBox node;
  private final List<KeyButton> buttons;

  PeopleStep(NewEventViewModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    Label words = new Label(texts.of("make.people.words"));
    PanelFrame.wrap(words);
    rows.getStyleClass().add("form-part");
    node = new VBox(words, rows);
    node.getStyleClass().add("form");
    buttons = List.of(new KeyButton(texts.of("make.add"), KeyCode.F4, model::addPerson));
    model.people().addListener((all, before, now) -> fill());
    fill();
  }

  private void fill() {
    for (int person = rows.getChildren().size(); person < model.people().get(); person++) {
      rows.getChildren().add(new PersonRow(model, texts, person));
    }
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public Node first() {
    return ((PersonRow) rows.getChildren().get(0)).first();
  }

  @Override
  public List<KeyButton> buttons() {
    return buttons;
  }
}
