package lanewarden.kiosk.rulebook;

import java.util.List;
import java.util.function.IntFunction;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.WrappedWords;

/**
 * Sentences under each other, each with a sign in front if it has one. The lines stay while what
 * they say changes, so that a key needs no new ones.
 */
final class SaidLines extends VBox {

  /** One line. */
  private static final class Line extends HBox {
    private final Mark mark = new Mark();
    private final Label said = new Label();

    Line(boolean signed) {
      WrappedWords.in(said);
      said.setMinHeight(USE_PREF_SIZE);
      HBox.setHgrow(said, Priority.ALWAYS);
      getStyleClass().add("said-line");
      if (signed) {
        getChildren().add(mark);
      }
      getChildren().add(said);
    }
  }

  private final boolean signed;

  SaidLines(boolean signed) {
    this.signed = signed;
    getStyleClass().add("meaning-lines");
  }

  /** Says these sentences instead, with the sign of each where there are signs. */
  void say(List<String> sentences, IntFunction<Sign> sign) {
    int lines = sentences.size();
    if (getChildren().size() > lines) {
      getChildren().remove(lines, getChildren().size());
    }
    for (int i = 0; i < lines; i++) {
      if (i == getChildren().size()) {
        getChildren().add(new Line(signed));
      }
      Line line = (Line) getChildren().get(i);
      line.said.setText(sentences.get(i));
      if (signed) {
        line.mark.show(sign.apply(i));
      }
    }
  }

  /** Says these sentences instead. */
  void say(List<String> sentences) {
    say(sentences, i -> Sign.RUNNING);
  }
}
