package lanewarden.kiosk.line;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** The reading taken last: the largest thing on the screen. */
final class ReadingFigure extends HBox {
  private static final PseudoClass VOID = PseudoClass.getPseudoClass("void");
  private static final PseudoClass AT_BOW = PseudoClass.getPseudoClass("at-bow");

  private final Texts texts;
  private final Label value = new Label();
  private final Label unit = new Label();
  private final Label beside = new Label();
  private final Label bow = new Label();

  ReadingFigure(Texts texts) {
    this.texts = texts;
    value.getStyleClass().add("reading-value");
    value.setId("reading");
    value.setMinWidth(USE_PREF_SIZE);
    unit.getStyleClass().add("reading-unit");
    unit.setMinWidth(USE_PREF_SIZE);
    beside.setId("reading-beside");
    beside.setMinWidth(USE_PREF_SIZE);
    beside.managedProperty().bind(beside.textProperty().isNotEmpty());
    bow.setId("at-bow");
    WrappedWords.in(bow);
    bow.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    bow.managedProperty().bind(bow.textProperty().isNotEmpty());
    getChildren().addAll(value, new VBox(unit, beside, bow));
    getStyleClass().add("reading");
    setAccessibleRole(AccessibleRole.TEXT);
  }

  void show(Optional<Figure> figure, String atBow) {
    value.setText(figure.map(Figure::value).orElseGet(() -> texts.of("reading.none")));
    unit.setText(figure.map(Figure::unit).orElse(""));
    boolean counts = figure.map(Figure::counts).orElse(true);
    beside.setText(
        counts
            ? figure.flatMap(Figure::converted).map(c -> texts.of("reading.about", c)).orElse("")
            : texts.of("reading.void"));
    bow.setText(atBow);
    pseudoClassStateChanged(VOID, !counts);
    pseudoClassStateChanged(AT_BOW, !atBow.isEmpty());
    setAccessibleText(
        figure.isEmpty()
            ? texts.of("reading.none.spoken")
            : String.join(" ", value.getText(), unit.getText(), beside.getText(), atBow));
  }
}
