package lanewarden.kiosk.form;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.IntegerProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/**
 * Options in a row, one of which is chosen: with the arrow keys, with its number or by touch. To
 * the tabulator it is one stop.
 */
public final class ChoiceRow extends FlowPane {
  private final List<ToggleButton> buttons = new ArrayList<>();
  private final IntegerProperty chosen;
  private final String label;
  private final Texts texts;

  /**
   * @param chosen the place of the option chosen, from 0; negative while none is
   */
  public ChoiceRow(Question question, IntegerProperty chosen, Texts texts) {
    this.chosen = chosen;
    this.label = question.label();
    this.texts = texts;
    for (String option : question.options()) {
      int place = buttons.size();
      ToggleButton button = new ToggleButton(texts.of("panel.pick", place + 1, option));
      button.setFocusTraversable(false);
      button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
      button.setAccessibleText(texts.of("form.option.spoken", label, option));
      WrappedWords.in(button);
      button.maxWidthProperty().bind(widthProperty());
      button.setOnAction(
          e -> {
            requestFocus();
            choose(place);
          });
      buttons.add(button);
    }
    getChildren().addAll(buttons);
    getStyleClass().add("choice-row");
    setId("form-" + question.name());
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.TEXT);
    addEventHandler(KeyEvent.KEY_PRESSED, this::arrows);
    chosen.addListener((all, before, now) -> show());
    show();
  }

  /** A flow asks for the room of its longest words; these go on in further lines instead. */
  @Override
  protected double computeMinWidth(double height) {
    return buttons.stream().mapToDouble(button -> button.minWidth(-1)).max().orElse(0);
  }

  private void arrows(KeyEvent event) {
    switch (event.getCode()) {
      case RIGHT -> choose(Math.min(buttons.size() - 1, chosen.get() + 1));
      case LEFT -> choose(Math.max(0, chosen.get() - 1));
      default -> {
        return;
      }
    }
    event.consume();
  }

  /** Chooses the option with the number that was typed, if there is one. */
  public void typed(String text) {
    int place = text.codePointAt(0) - '1';
    if (place >= 0 && place < buttons.size()) {
      choose(place);
    }
  }

  private void choose(int place) {
    chosen.set(place);
    show();
  }

  private void show() {
    int now = chosen.get();
    for (int place = 0; place < buttons.size(); place++) {
      buttons.get(place).setSelected(place == now);
    }
    setAccessibleText(
        now < 0 ? label : texts.of("form.option.spoken", label, buttons.get(now).getText()));
  }
}
