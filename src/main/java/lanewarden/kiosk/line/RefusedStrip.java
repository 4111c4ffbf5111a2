package lanewarden.kiosk.line;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.RefusalWording;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** The line that was refused last: why, and its bytes. */
final class RefusedStrip extends HBox {
  private final Texts texts;
  private final Label words = new Label();
  private final Label bytes = new Label();

  RefusedStrip(Texts texts) {
    this.texts = texts;
    Mark mark = new Mark();
    mark.show(Sign.NOT_ADMITTED);
    WrappedWords.in(words);
    words.setMinHeight(USE_PREF_SIZE);
    words.setId("refused-words");
    bytes.getStyleClass().add("raw");
    bytes.setId("refused-bytes");
    VBox both = new VBox(words, bytes);
    both.setMinWidth(0);
    HBox.setHgrow(both, Priority.ALWAYS);
    getChildren().addAll(mark, both);
    getStyleClass().add("refused-strip");
    setAccessibleRole(AccessibleRole.TEXT);
    setId("refused");
  }

  void show(Optional<RefusedLine> refused) {
    setVisible(refused.isPresent());
    setManaged(refused.isPresent());
    refused.ifPresent(
        line -> {
          words.setText(
              texts.of("line.refused", RefusalWording.of(line.reason(), texts), line.words()));
          bytes.setText(line.bytes().isEmpty() ? texts.of("line.refused.empty") : line.bytes());
          setAccessibleText(words.getText() + " " + bytes.getText());
        });
  }
}
