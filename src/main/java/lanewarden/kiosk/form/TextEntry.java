package lanewarden.kiosk.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.TextSize;

/** A field to type in, of one line or of some; below it the words that stand for something. */
public final class TextEntry extends VBox implements FormField.Entry {
  private final TextInputControl input;
  private final FlowPane words = new FlowPane();
  private final List<ToggleButton> buttons = new ArrayList<>();
  private final FormField.Typist typist;

  // Held here, so that it is followed as long as this lives
  private final ObservableValue<TextSize> size = ScreenFrame.sizeAt(this);

  /**
   * @param lines whether it may be more than one
   * @param example shown while nothing stands there
   * @param special the words that stand for something, to be picked
   * @param typed takes what is typed or picked
   */
  public TextEntry(boolean lines, String example, List<String> special, Consumer<String> typed) {
    typist = new FormField.Typist(typed);
    input = lines ? area() : Figures.field(new TextField());
    input.textProperty().addListener((all, before, now) -> typist.typed(now));
    for (String word : special) {
      ToggleButton button = new ToggleButton(word);
      button.getStyleClass().add("choice");
      button.setAccessibleText(word);
      button.setOnAction(e -> input.setText(button.isSelected() ? word : ""));
      buttons.add(button);
      words.getChildren().add(button);
    }
    words.getStyleClass().add("choices");
    HBox.setHgrow(input, Priority.ALWAYS);
    if (special.size() == 1) {
      getChildren().add(new HBox(input, words.getChildren().get(0)));
    } else if (special.isEmpty()) {
      getChildren().add(input);
    } else {
      getChildren().addAll(input, words);
    }
    getStyleClass().add("text-entry");
    Label hint = new Label(example);
    PanelFrame.wrap(hint);
    hint.managedProperty().bind(hint.visibleProperty());
    getChildren().add(hint);
    size.subscribe(now -> say(hint, example, now.isLarge()));
  }

  /** Large letters do not fit into the field: then the example stands whole below it. */
  private void say(Label hint, String example, boolean large) {
    input.setPromptText(large ? "" : example);
    hint.setVisible(large && !example.isBlank());
  }

  private static TextArea area() {
    TextArea area = new TextArea();
    area.setWrapText(true);
    area.setPrefRowCount(3);
    area.addEventFilter(KeyEvent.KEY_PRESSED, e -> leave(area, e));
    return area;
  }

  /** The tabulator leads on, as in every other field; with Ctrl the area does that itself. */
  private static void leave(TextArea area, KeyEvent e) {
    if (e.getCode() == KeyCode.TAB && !e.isControlDown()) {
      e.consume();
      area.fireEvent(
          new KeyEvent(
              area,
              area,
              KeyEvent.KEY_PRESSED,
              "",
              "\t",
              KeyCode.TAB,
              e.isShiftDown(),
              true,
              false,
              false));
    }
  }

  @Override
  public Node node() {
    return this;
  }

  @Override
  public void show(String text) {
    if (!text.equals(input.getText())) {
      typist.showing(() -> input.setText(text));
    }
    buttons.forEach(button -> button.setSelected(button.getText().equals(text.strip())));
  }

  @Override
  public void describe(String spoken) {
    input.setAccessibleText(spoken);
  }
}
