package lanewarden.kiosk.line;

import javafx.beans.binding.Bindings;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** A panel over the line in which the official enters or confirms one thing. */
final class EntryPanel implements Page {

  /**
   * What the panel says.
   *
   * @param title what is about to be done
   * @param words what it means
   * @param field what to write; blank where there is only something to confirm
   * @param unit the unit that a number in the field has where none is written; blank where there is
   *     no such thing
   * @param act what the button does
   * @param key does it; another than Enter where what is scanned must not
   */
  record Wording(String title, String words, String field, String unit, String act, KeyCode key) {
    Wording(String title, String words, String field, String unit, String act) {
      this(title, words, field, unit, act, KeyCode.ENTER);
    }

    Wording(String title, String words, String field, String act) {
      this(title, words, field, "", act);
    }

    Wording on(KeyCode other) {
      return new Wording(title, words, field, unit, act, other);
    }
  }

  private final PanelFrame root = new PanelFrame("entry-panel");
  private final TextField field = new TextField();
  private final Button first;
  private final boolean asksText;

  EntryPanel(EntryViewModel model, Wording wording, Texts texts, Runnable leave) {
    asksText = !wording.field().isBlank();
    Label title = new Label(wording.title());
    Label words = new Label(wording.words());
    TroubleCard card = new TroubleCard(texts);
    model.trouble().addListener((all, before, now) -> card.show(now));
    KeyButton act = new KeyButton(wording.act(), wording.key(), model::enter);
    act.disableProperty().bind(model.busy());
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    // The one that Enter works, which a reader types behind each bib, as Tab before it
    first = wording.key() == KeyCode.ENTER ? act : back;
    act.setFocusTraversable(wording.key() == KeyCode.ENTER);
    root.say(title, words);
    addPicks(model, texts);
    if (asksText) {
      addField(model, wording);
    }
    root.getChildren().add(card);
    root.offer(act, back);
  }

  private void addPicks(EntryViewModel model, Texts texts) {
    int number = 1;
    for (String pick : model.picks()) {
      Button button = new Button(texts.of("panel.pick", number, pick));
      button.getStyleClass().add("pick");
      button.setMaxWidth(Double.MAX_VALUE);
      button.setOnAction(e -> model.submit(pick));
      button.disableProperty().bind(model.busy());
      root.getChildren().add(button);
      number++;
    }
  }

  private void addField(EntryViewModel model, Wording wording) {
    Label label = new Label(wording.field());
    label.setLabelFor(field);
    PanelFrame.wrap(label);
    field.setAccessibleText(wording.field());
    field.setId("entry-field");
    field.textProperty().bindBidirectional(model.text());
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox line = new HBox(field);
    line.getStyleClass().add("entry-line");
    if (!wording.unit().isBlank()) {
      Label unit = new Label(wording.unit());
      unit.setId("entry-unit");
      unit.setMinWidth(Label.USE_PREF_SIZE);
      // Beside a unit that was written it would read as a second one
      unit.visibleProperty()
          .bind(
              Bindings.createBooleanBinding(
                  () -> model.text().get().codePoints().noneMatch(Character::isLetter),
                  model.text()));
      line.getChildren().add(unit);
    }
    root.getChildren().addAll(label, line);
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    if (asksText) {
      field.requestFocus();
    } else {
      first.requestFocus();
    }
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }

  @Override
  public void typed(String text) {
    if (asksText) {
      field.requestFocus();
      field.appendText(text);
    }
  }
}
