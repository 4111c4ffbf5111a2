package lanewarden.kiosk.line;

import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** What stands in the place of the check while nobody is at the line, with the cautions. */
final class ClearLine extends VBox {
  private final Texts texts;
  private final Mark lastMark = new Mark();
  private final Label lastWords = new Label();
  private final Label title = new Label();
  private final Label how = new Label();
  private final HBox last = new HBox(lastMark, lastWords);

  ClearLine(Texts texts) {
    this.texts = texts;
    title.getStyleClass().add("clear-title");
    title.setId("clear-title");
    Label cautionTitle = new Label(texts.of("caution.title"));
    cautionTitle.getStyleClass().add("caution-title");
    VBox cautions =
        new VBox(
            cautionTitle,
            caution("caution.clear"),
            caution("caution.nocked"),
            caution("caution.inspect"),
            caution("caution.defer"));
    cautions.getStyleClass().add("cautions");
    cautions.setId("cautions");
    WrappedWords.in(lastWords);
    lastWords.setId("left-last-words");
    last.getStyleClass().addAll("outcome", "left-last");
    last.setId("left-last");
    how.getStyleClass().add("clear-how");
    WrappedWords.in(how);
    Region room = new Region();
    VBox.setVgrow(room, Priority.ALWAYS);
    getChildren().addAll(title, how, last, room, cautions);
    getStyleClass().add("clear-line");
    show(Optional.empty(), Map.of(), false);
  }

  private Label caution(String key) {
    Label label = new Label(texts.of(key));
    WrappedWords.in(label);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  /**
   * Shows how the check ended that left the line last.
   *
   * @param ruled of every check on which a judge ruled, which check counts by that
   * @param stopped whether nobody is called as things stand
   */
  void show(Optional<CheckPage> left, Map<Long, Long> ruled, boolean stopped) {
    title.setText(texts.of(stopped ? "clear.stopped" : "clear.title"));
    how.setText(texts.of(stopped ? "clear.stopped.how" : "clear.how"));
    last.setVisible(left.isPresent());
    last.setManaged(left.isPresent());
    left.ifPresent(
        check -> {
          Sign sign = check.sign();
          lastMark.show(sign);
          Mark.show(last, sign);
          lastWords.setText(last(check, Optional.ofNullable(ruled.get(check.number()))));
        });
  }

  /** What follows an outcome is over once a judge ruled. */
  private String last(CheckPage check, Optional<Long> counts) {
    if (!check.decided()) {
      return texts.of("clear.last.ended", check.bib(), check.name());
    }
    return texts.of(
        "clear.last",
        check.bib(),
        check.name(),
        check.word(),
        check.words(),
        counts
            .map(number -> texts.of("clear.last.ruled", String.valueOf(number)))
            .orElse(check.follows()));
  }
}
