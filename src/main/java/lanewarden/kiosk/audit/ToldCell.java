package lanewarden.kiosk.audit;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import org.jspecify.annotations.Nullable;

/** One line of what an errand has to tell: its sign, and the words, which never rest on it. */
final class ToldCell extends ListCell<Ending.Told> {
  private final Texts texts;
  private final Mark mark = new Mark();
  private final Label words = new Label();
  private final HBox row = new HBox(mark, words);

  ToldCell(Texts texts) {
    this.texts = texts;
    words.setWrapText(true);
    words.setMinHeight(USE_PREF_SIZE);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    row.getStyleClass().add("docket-row");
    getStyleClass().add("wire-cell");
    // Long lines wrap within the list instead of widening it
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(Ending.@Nullable Told line, boolean empty) {
    super.updateItem(line, empty);
    if (empty || line == null) {
      setGraphic(null);
      setAccessibleText("");
      return;
    }
    mark.show(sign(line.weight()));
    mark.setVisible(line.weight() != Ending.Weight.FACT);
    words.setText(line.words());
    setAccessibleText(spoken(line));
    setGraphic(row);
  }

  private static Sign sign(Ending.Weight weight) {
    return switch (weight) {
      case FACT -> Sign.HEARD;
      case GOOD -> Sign.WITHIN;
      case OPEN -> Sign.NOT_DECIDED;
      case WRONG -> Sign.OVER;
    };
  }

  private String spoken(Ending.Told line) {
    return switch (line.weight()) {
      case FACT, GOOD -> line.words();
      case OPEN -> texts.of("records.spoken.open", line.words());
      case WRONG -> texts.of("records.spoken.wrong", line.words());
    };
  }
}
