package lanewarden.kiosk.audit;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** One line of what an errand has to tell: its sign, and the words, which never rest on it. */
final class ToldCell extends RowCell<Ending.Told> {
  private final Texts texts;
  private final Mark mark = new Mark();
  private final Label words = new Label();

  ToldCell(Texts texts) {
    super("docket-row");
    this.texts = texts;
    WrappedWords.in(words);
    words.setMinHeight(USE_PREF_SIZE);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    lay(mark, words);
  }

  @Override
  protected String show(Ending.Told line) {
    mark.show(sign(line.weight()));
    mark.setVisible(line.weight() != Ending.Weight.FACT);
    words.setText(line.words());
    return spoken(line);
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
