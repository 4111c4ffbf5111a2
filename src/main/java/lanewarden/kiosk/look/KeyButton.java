package lanewarden.kiosk.look;

import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A button with the key that does the same written on it. */
public final class KeyButton extends Button {
  private final KeyCode key;
  private final Label words;
  private final KeyCap cap;

  /**
   * @param words what it does
   * @param key the key that does it
   */
  public KeyButton(String words, KeyCode key, Runnable act) {
    this.key = key;
    this.words = new Label(words);
    cap = new KeyCap(key);
    cap.textProperty().subscribe(this::speak);
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
    speak();
  }

  /** The key that does the same. */
  public KeyCode key() {
    return key;
  }

  /** With the key beside the words instead of above them: for many, one below the other. */
  public KeyButton abreast() {
    HBox both = new HBox(cap, words);
    both.getStyleClass().add("key-button-content");
    setGraphic(both);
    return this;
  }

  /** How wide it must be for its words to be whole. */
  double wordsWidth() {
    Insets insets = getInsets();
    return insets.getLeft() + insets.getRight() + getGraphic().prefWidth(-1) + 1;
  }

  private void speak() {
    setAccessibleText(words.getText() + ", " + cap.getText());
  }
}
