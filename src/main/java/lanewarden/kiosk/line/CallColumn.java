package lanewarden.kiosk.line;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** The field that bibs are scanned or typed into, whom it may mean, and how far the roster is. */
final class CallColumn extends VBox {
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

  private final LineViewModel model;
  private final Texts texts;
  private final TextField field = new TextField();
  private final VBox matches = new VBox();
  private final Label progress = new Label();
  private final ProgressBar bar = new ProgressBar(0);

  /**
   * @param told stands below the field and those it may mean
   */
  CallColumn(LineViewModel model, Texts texts, Node told) {
    this.model = model;
    this.texts = texts;
    Label label = new Label(texts.of("line.call"));
    label.setLabelFor(field);
    label.getStyleClass().add("field-title");
    PanelFrame.wrap(label);
    field.setId("call-field");
    field.setAccessibleText(texts.of("line.call.spoken"));
    field.getStyleClass().add("call-field");
    field.textProperty().bindBidirectional(model.typed());
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
    matches.getStyleClass().add("matches");
    matches.setId("matches");
    model.matches().addListener((ListChangeListener<Match>) change -> list());
    model.chosen().addListener((all, before, now) -> pickOut());
    // What did not work is written over by the next bib
    model.notice().addListener((all, before, now) -> now.ifPresent(trouble -> field.selectAll()));
    Region room = new Region();
    VBox.setVgrow(room, Priority.ALWAYS);
    WrappedWords.in(progress);
    progress.setMinHeight(USE_PREF_SIZE);
    progress.setId("progress");
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setFocusTraversable(false);
    bar.accessibleTextProperty().bind(progress.textProperty());
    getChildren().addAll(label, field, matches, told, room, progress, bar);
    // However much is told, the buttons below stay whole
    setMinHeight(0);
    getStyleClass().add("call-column");
  }

  private void arrows(KeyEvent event) {
    if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
      model.choose(event.getCode() == KeyCode.DOWN ? 1 : -1);
      event.consume();
    }
  }

  private void list() {
    List<Button> buttons = new ArrayList<>();
    for (Match match : model.matches()) {
      Button button = new Button(texts.of("line.match", match.bib(), match.name()));
      button.setAccessibleText(
          texts.of("line.match.spoken", match.bib(), match.name(), match.division()));
      button.setMaxWidth(Double.MAX_VALUE);
      button.getStyleClass().add("match");
      button.setOnAction(e -> model.call(match.bib()));
      buttons.add(button);
    }
    matches.getChildren().setAll(buttons);
    pickOut();
  }

  private void pickOut() {
    for (int i = 0; i < matches.getChildren().size(); i++) {
      matches.getChildren().get(i).pseudoClassStateChanged(CHOSEN, i == model.chosen().get());
    }
  }

  void show(LinePage page) {
    progress.setText(page.progress());
    bar.setProgress(page.share());
  }

  void focus() {
    field.requestFocus();
  }

  /** Takes what a reader typed while the focus was elsewhere. */
  void typed(String text) {
    focus();
    // Taking the focus marks everything, and the next letter must not write over the first
    field.end();
    field.appendText(text);
  }
}
