package lanewarden.kiosk.look;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;

/** What stands above every screen and board on which nothing counts. */
public final class TrainingBand extends Row {

  /** Never hidden. */
  public TrainingBand(Texts texts) {
    Label word = new Label(texts.of("training.word"));
    word.getStyleClass().add("training-word");
    word.setMinWidth(USE_PREF_SIZE);
    Label words = new Label(texts.of("training.words"));
    PanelFrame.wrap(words);
    Label again = new Label(texts.of("training.word"));
    again.getStyleClass().add("training-word");
    again.setMinWidth(USE_PREF_SIZE);
    getChildren().addAll(word, words, again);
    getStyleClass().add("training-band");
    setId("training");
    setMinHeight(USE_PREF_SIZE);
    setAccessibleRole(AccessibleRole.TEXT);
    setAccessibleText(word.getText() + ". " + words.getText());
  }
}
