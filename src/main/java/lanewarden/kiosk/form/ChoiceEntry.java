package lanewarden.kiosk.form;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/**
 * Words to choose from: one of them, or as many as one likes. Pressed again, a word is taken out.
 */
public final class ChoiceEntry extends FlowPane implements FormField.Entry {
  private final Set<String> chosen = new LinkedHashSet<>();
  private final String usual;

  /**
   * @param usual the word that holds where none is chosen; blank if there is none
   */
  public ChoiceEntry(List<String> words, String usual, boolean several, Consumer<String> typed) {
    this.usual = usual;
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
      getChildren().add(button);
    }
    getStyleClass().add("choices");
  }

  @Override
  public Node node() {
    return this;
  }

  @Override
  public void show(String text) {
    chosen.clear();
    text.lines().map(String::strip).forEach(chosen::add);
    for (Node node : getChildren()) {
      ToggleButton button = (ToggleButton) node;
      String word = button.getText();
      button.setSelected(chosen.contains(word) || (text.isBlank() && word.equals(usual)));
    }
  }

  @Override
  public void describe(String spoken) {
    for (Node node : getChildren()) {
      ToggleButton button = (ToggleButton) node;
      button.setAccessibleText(button.getText() + ". " + spoken);
    }
  }
}
