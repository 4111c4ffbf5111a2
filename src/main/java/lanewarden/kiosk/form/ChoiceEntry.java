package lanewarden.kiosk.form;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;

/**
 * Words to choose from: one of them, or as many as one likes. Pressed again, a word is taken out.
 * Where one is chosen, the arrow keys choose, and the tabulator stops once.
 */
public final class ChoiceEntry extends FlowPane implements FormField.Entry {
  private final Set<String> chosen = new LinkedHashSet<>();
  private final List<ToggleButton> buttons = new ArrayList<>();
  private final String usual;
  private final boolean several;

  /**
   * @param usual the word that holds where none is chosen; blank if there is none
   */
  public ChoiceEntry(List<String> words, String usual, boolean several, Consumer<String> typed) {
    this.usual = usual;
    this.several = several;
    for (String word : words) {
      ToggleButton button = new ToggleButton(word);
      button.getStyleClass().add("choice");
      button.setAccessibleRole(several ? AccessibleRole.CHECK_BOX : AccessibleRole.RADIO_BUTTON);
      button.setOnAction(
          e -> {
            boolean taken = chosen.remove(word);
            if (!several) {
              chosen.clear();
            }
            if (!taken) {
              chosen.add(word);
            }
            typed.accept(words.stream().filter(chosen::contains).collect(Collectors.joining("\n")));
          });
      buttons.add(button);
    }
    getChildren().addAll(buttons);
    getStyleClass().add("choices");
    if (!several) {
      // Before the buttons get them: those only move the focus with these keys
      addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
    }
    stopAtOne();
  }

  private void arrows(KeyEvent event) {
    int step =
        switch (event.getCode()) {
          case RIGHT -> 1;
          case LEFT -> -1;
          default -> 0;
        };
    if (step == 0) {
      return;
    }
    event.consume();
    int at = buttons.stream().map(Node::isFocused).toList().indexOf(true);
    int to = Math.max(0, Math.min(buttons.size() - 1, at + step));
    buttons.get(to).requestFocus();
    if (!buttons.get(to).isSelected()) {
      buttons.get(to).fire();
    }
  }

  /** The button that the tabulator stops at: the one that is chosen, else the first. */
  public Node stop() {
    return buttons.stream()
        .filter(ToggleButton::isSelected)
        .findFirst()
        .orElseGet(() -> buttons.get(0));
  }

  private void stopAtOne() {
    Node stop = stop();
    buttons.forEach(button -> button.setFocusTraversable(several || button.equals(stop)));
  }

  @Override
  public Node node() {
    return this;
  }

  @Override
  public void show(String text) {
    chosen.clear();
    text.lines().map(String::strip).forEach(chosen::add);
    for (ToggleButton button : buttons) {
      String word = button.getText();
      button.setSelected(chosen.contains(word) || (text.isBlank() && word.equals(usual)));
    }
    stopAtOne();
  }

  @Override
  public void describe(String spoken) {
    for (ToggleButton button : buttons) {
      button.setAccessibleText(button.getText() + ". " + spoken);
    }
  }
}
