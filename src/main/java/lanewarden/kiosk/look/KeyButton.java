package lanewarden.kiosk.look;

import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;

/** A button with the key that does the same written on it. */
public final class KeyButton extends Button {
  private final KeyCode key;
  private final Label words;

  /**
   * @param words what it does
   * @param key the key that does it
   */
  public KeyButton(String words, KeyCode key, Runnable act) {
    this.key = key;
    this.words = new Label(words);
    Label cap = new Label(capOf(key));
    cap.getStyleClass().add("key-cap");
    VBox both = new VBox(cap, this.words);
    both.getStyleClass().add("key-button-content");
    setGraphic(both);
    setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    getStyleClass().add("key-button");
    rename(words);
    setOnAction(e -> act.run());
  }

  /** Gives it other words; the key stays. */
  public void rename(String other) {
    words.setText(other);
    setText(other);
    setAccessibleText(other + ", " + capOf(key));
  }

  /** The key that does the same. */
  public KeyCode key() {
    return key;
  }

  private static String capOf(KeyCode key) {
    return switch (key) {
      case ENTER -> "Enter";
      case ESCAPE -> "Esc";
      case PAGE_DOWN -> "PgDn";
      case PAGE_UP -> "PgUp";
      case DELETE -> "Del";
      case INSERT -> "Ins";
      default -> key.getName();
    };
  }
}
