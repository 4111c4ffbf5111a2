package lanewarden.kiosk.line;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** What speaks against readings of the check, with the key that lets one count all the same. */
final class DoubtStrip extends Row {
  private final Label words = new Label();
  private final KeyButton keep;

  DoubtStrip(Texts texts, Runnable openKeep) {
    Mark mark = new Mark();
    mark.show(Sign.NOT_ADMITTED);
    WrappedWords.in(words);
    words.setMinHeight(USE_PREF_SIZE);
    words.setMaxWidth(Double.MAX_VALUE);
    words.setId("doubt-words");
    HBox.setHgrow(words, Priority.ALWAYS);
    keep = new KeyButton(texts.of("act.keep"), KeyCode.PAGE_UP, openKeep);
    keep.setId("keep");
    getChildren().addAll(mark, words, keep);
    getStyleClass().add("refused-strip");
    setAccessibleRole(AccessibleRole.TEXT);
    setId("doubt");
    show(List.of(), false);
  }

  void addTo(Keys keys) {
    keys.add(keep);
  }

  /**
   * @param doubts in words, with what is to be done; none hides the strip
   * @param open whether an official must say whether a reading counts
   */
  void show(List<String> doubts, boolean open) {
    setVisible(!doubts.isEmpty());
    setManaged(!doubts.isEmpty());
    keep.setDisable(!open);
    keep.setVisible(open);
    keep.setManaged(open);
    words.setText(String.join("\n", doubts));
    setAccessibleText(words.getText());
  }
}
