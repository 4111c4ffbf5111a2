package lanewarden.kiosk.line;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** Above everything else at the line while it is not clear: why, and that the bow is let down. */
final class StopStrip extends Row {
  private final Texts texts;
  private final Label words = new Label();

  StopStrip(Texts texts) {
    this.texts = texts;
    Mark mark = new Mark();
    mark.show(Sign.STOPPED);
    Mark.show(this, Sign.STOPPED);
    Label word = new Label(texts.of("stop.word"));
    word.setId("stop-word");
    word.getStyleClass().add("stop-word");
    word.setMinHeight(USE_PREF_SIZE);
    words.setId("stop-words");
    words.getStyleClass().add("stop-words");
    WrappedWords.in(word, words);
    words.setMinHeight(USE_PREF_SIZE);
    VBox said = new VBox(word, words);
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(mark, said);
    getStyleClass().addAll("outcome", "stop-strip");
    setMinHeight(USE_PREF_SIZE);
    setAccessibleRole(AccessibleRole.TEXT);
    setId("stop");
    show(Optional.empty());
  }

  /**
   * @param reason why the line is not clear; none hides the strip
   */
  void show(Optional<String> reason) {
    setVisible(reason.isPresent());
    setManaged(reason.isPresent());
    words.setText(reason.map(why -> texts.of("stop.words", why)).orElse(""));
    setAccessibleText(texts.of("stop.word") + ". " + words.getText());
  }
}
