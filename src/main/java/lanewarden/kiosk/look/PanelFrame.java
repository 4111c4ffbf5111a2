package lanewarden.kiosk.look;

import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;

/** What a panel over a screen stands in: its title and words wrap, its buttons stand in one row. */
public final class PanelFrame extends VBox {
  private final Keys keys = new Keys();

  /**
   * @param id by which the panel is found
   */
  public PanelFrame(String id) {
    setId(id);
    getStyleClass().add("panel");
    setMaxHeight(USE_PREF_SIZE);
  }

  /** Shows the title, and words that are never cut short, below what is there. */
  public void say(Label title, Label... words) {
    title.getStyleClass().add("panel-title");
    wrap(title);
    wrap(words);
    getChildren().add(title);
    getChildren().addAll(words);
  }

  /** Lets words take the lines they need. */
  public static void wrap(Label... words) {
    WrappedWords.in(words);
    for (Label label : words) {
      label.setMinHeight(USE_PREF_SIZE);
    }
  }

  /** Shows the buttons below what is there; each works by its key too. */
  public void offer(KeyButton act, KeyButton... others) {
    act.getStyleClass().add("primary");
    Row row = new Row(act);
    row.getChildren().addAll(others);
    row.getStyleClass().add("panel-buttons");
    // However much does not fit, what scrolls gives way and not the buttons
    row.setMinHeight(USE_PREF_SIZE);
    keys.add(act);
    keys.add(others);
    getChildren().add(row);
  }

  /**
   * Presses the button with this key, unless it is disabled.
   *
   * @return whether there is such a button
   */
  public boolean press(KeyCode code) {
    return keys.press(code);
  }
}
