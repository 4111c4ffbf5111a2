package lanewarden.kiosk.line;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/**
 * What would bring a set-up inside that is over, with its cautions, or how to come to know it: said
 * apart from the outcome, since no verdict rests on it.
 */
final class AdviceStrip extends VBox {
  private final Label heading = new Label();
  private final Label line = new Label();
  private final Label exception = new Label();
  private final Label cautions = new Label();
  private final Texts texts;

  AdviceStrip(Texts texts) {
    this.texts = texts;
    heading.getStyleClass().add("advice-heading");
    line.getStyleClass().add("advice-line");
    line.setId("advice");
    exception.getStyleClass().add("advice-exception");
    exception.setId("advice-exception");
    cautions.getStyleClass().add("advice-cautions");
    cautions.setId("advice-cautions");
    for (Label label : List.of(heading, line, exception, cautions)) {
      WrappedWords.in(label);
      label.setMinHeight(USE_PREF_SIZE);
      label.managedProperty().bind(label.textProperty().isNotEmpty());
    }
    // Above: where there is no room for all of it, the advice is what is cut off
    getChildren().addAll(heading, cautions, line, exception);
    getStyleClass().add("advice");
    setMinHeight(USE_PREF_SIZE);
    setAccessibleRole(AccessibleRole.TEXT);
  }

  void show(CheckPage check) {
    boolean shown = check.advice().isPresent() || check.wantsWeighing();
    setVisible(shown);
    setManaged(shown);
    heading.setText(check.advice().isPresent() ? texts.of("line.advice") : "");
    line.setText(
        check
            .advice()
            .map(AdvicePage::line)
            .orElse(check.wantsWeighing() ? texts.of("line.advice.weigh") : ""));
    exception.setText(check.advice().map(AdvicePage::exception).orElse(""));
    cautions.setText(check.advice().map(AdvicePage::cautions).orElse(""));
    setAccessibleText(
        Stream.of(heading, cautions, line, exception)
            .map(Label::getText)
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" ")));
  }
}
