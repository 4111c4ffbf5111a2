package lanewarden.kiosk.line;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.line.Preparation.Figure;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/**
 * The panel in which the official enters what was weighed, a field a figure. Enter goes to the next
 * field that the rule asks for and that is still empty, and takes the figures when none is.
 */
final class SetUpPanel implements Page {
  private final SetUpViewModel model;
  private final PanelFrame root = new PanelFrame("set-up-panel");
  private final Map<Figure, TextField> fields = new EnumMap<>(Figure.class);

  SetUpPanel(SetUpViewModel model, CheckPage check, Texts texts, Runnable leave) {
    this.model = model;
    Label title = new Label(texts.of("set-up.title", check.bib(), check.name()));
    Label words = new Label(texts.of("set-up.words"));
    Label least = new Label(check.preparation().least().orElse(""));
    least.setId("set-up-least");
    least.setManaged(check.preparation().least().isPresent());
    least.getStyleClass().add("set-up-least");
    root.say(title, words, least);
    model.offered().forEach(asked -> addField(asked, texts));
    TroubleCard card = new TroubleCard(texts);
    model.trouble().addListener((all, before, now) -> card.show(now));
    KeyButton act = new KeyButton(texts.of("set-up.act"), KeyCode.ENTER, this::enter);
    act.disableProperty().bind(model.busy());
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    root.getChildren().add(card);
    root.offer(act, back);
  }

  private void addField(Preparation.Asked asked, Texts texts) {
    TextField field = Figures.field(new TextField());
    String words =
        asked.known().isBlank()
            ? asked.label()
            : texts.of("set-up.standing", asked.label(), asked.known());
    Label label = new Label(words);
    label.setLabelFor(field);
    field.setAccessibleText(words);
    field.setId("set-up-field-" + (fields.size() + 1));
    field.textProperty().bindBidirectional(model.text(asked.figure()));
    fields.put(asked.figure(), field);
    root.getChildren().addAll(label, field);
  }

  private void enter() {
    Optional<Figure> blank = model.firstBlank();
    Optional<TextField> next = blank.map(fields::get).filter(field -> !field.isFocused());
    if (next.isPresent()) {
      next.get().requestFocus();
    } else {
      model.enter();
    }
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    TextField first = fields.values().iterator().next();
    model.firstBlank().map(fields::get).orElse(first).requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }

  @Override
  public void typed(String text) {
    focus();
    fields.values().stream()
        .filter(TextField::isFocused)
        .findFirst()
        .ifPresent(field -> field.appendText(text));
  }
}
