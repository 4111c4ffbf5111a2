package lanewarden.kiosk.line;

import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/**
 * What is stated of bow and arrow, and the checklist of conditions while the check runs, each with
 * its key.
 */
final class PreparationStrip extends VBox {
  private static final PseudoClass MISSING = PseudoClass.getPseudoClass("missing");
  private static final PseudoClass TICKED = PseudoClass.getPseudoClass("ticked");

  private final LineViewModel model;
  private final Texts texts;
  private final Label figures = new Label();
  private final KeyButton state;
  private final Row setUp;
  private final FlowPane conditions = new FlowPane();
  private final KeyButton tickAll;
  private final Row ticks;

  PreparationStrip(LineViewModel model, Texts texts, Runnable openSetUp) {
    this.model = model;
    this.texts = texts;
    WrappedWords.in(figures);
    figures.setId("set-up");
    figures.getStyleClass().add("set-up-figures");
    figures.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(figures, Priority.ALWAYS);
    state = new KeyButton(texts.of("act.set-up"), KeyCode.F10, openSetUp);
    setUp = new Row(figures, state);
    setUp.getStyleClass().add("set-up-row");
    conditions.getStyleClass().add("conditions");
    conditions.setId("conditions");
    HBox.setHgrow(conditions, Priority.ALWAYS);
    tickAll = new KeyButton(texts.of("act.tick"), KeyCode.F11, model::tickAll);
    ticks = new Row(conditions, tickAll);
    ticks.getStyleClass().add("set-up-row");
    getChildren().addAll(setUp, ticks);
    getStyleClass().add("preparation");
    setMinHeight(USE_PREF_SIZE);
  }

  void addTo(Keys keys) {
    keys.add(state, tickAll);
  }

  void show(CheckPage check) {
    Preparation preparation = check.preparation();
    show(this, preparation.any());
    show(setUp, preparation.asks());
    show(ticks, !preparation.conditions().isEmpty() && !check.decided());
    figures.setText(preparation.figures());
    setUp.pseudoClassStateChanged(MISSING, preparation.missing());
    // The row is there where the rule asks; its key works wherever a figure can be stated
    state.setDisable(preparation.offered().isEmpty());
    conditions.getChildren().setAll(preparation.conditions().stream().map(this::button).toList());
    tickAll.setDisable(!preparation.mayTick() || check.decided());
  }

  /** Nothing can be stated or ticked while nobody is at the line. */
  void rest() {
    state.setDisable(true);
    tickAll.setDisable(true);
  }

  private static void show(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }

  private Button button(Preparation.Condition condition) {
    String key = condition.ticked() ? "condition.ticked" : "condition.open";
    Button button = new Button(texts.of(key, condition.words()));
    button.setAccessibleText(
        texts.of(
            condition.ticked() ? "condition.ticked.spoken" : "condition.open.spoken",
            condition.words()));
    button.getStyleClass().add("condition");
    button.pseudoClassStateChanged(TICKED, condition.ticked());
    button.setDisable(condition.ticked());
    button.setOnAction(e -> model.tick(condition.words()));
    return button;
  }
}
