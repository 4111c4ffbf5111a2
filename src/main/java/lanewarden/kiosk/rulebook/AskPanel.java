package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** A panel over the studio that asks one thing: to confirm, or to pick. */
final class AskPanel implements Page {

  /**
   * What the panel says.
   *
   * @param title what it is about
   * @param words what it means
   * @param act what the button does; blank where one only picks
   */
  record Wording(String title, String words, String act) {}

  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final KeyButton back;
  private Optional<Node> first = Optional.empty();

  private AskPanel(Wording wording, Texts texts, Runnable leave) {
    Label title = new Label(wording.title());
    title.getStyleClass().add("panel-title");
    Label words = new Label(wording.words());
    for (Label label : new Label[] {title, words}) {
      WrappedWords.in(label);
      label.setMinHeight(Label.USE_PREF_SIZE);
    }
    back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    keys.add(back);
    root.getChildren().addAll(title, words);
    root.getStyleClass().add("panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId("ask-panel");
  }

  /** Asks to confirm. */
  static AskPanel confirm(Wording wording, Texts texts, Runnable act, Runnable leave) {
    AskPanel panel = new AskPanel(wording, texts, leave);
    panel.acting(wording.act(), act);
    return panel;
  }

  /** Asks to confirm, with another answer beside. */
  static AskPanel confirm(
      Wording wording, KeyButton other, Texts texts, Runnable act, Runnable leave) {
    AskPanel panel = new AskPanel(wording, texts, leave);
    panel.keys.add(other);
    panel.acting(wording.act(), act, other);
    return panel;
  }

  /** Asks to pick one of several. */
  static AskPanel pick(
      Wording wording, List<String> choices, Texts texts, Consumer<Integer> act, Runnable leave) {
    AskPanel panel = new AskPanel(wording, texts, leave);
    for (int i = 0; i < choices.size(); i++) {
      int chosen = i;
      Button button = new Button(choices.get(i));
      button.getStyleClass().add("pick");
      button.setMaxWidth(Double.MAX_VALUE);
      button.setId("pick-" + i);
      button.setOnAction(e -> act.accept(chosen));
      panel.root.getChildren().add(button);
      panel.first = panel.first.or(() -> Optional.of(button));
    }
    panel.buttons(panel.back);
    return panel;
  }

  private void acting(String words, Runnable act, KeyButton... others) {
    KeyButton button = new KeyButton(words, KeyCode.ENTER, act);
    button.getStyleClass().add("primary");
    button.setId("ask-act");
    keys.add(button);
    first = Optional.of(button);
    List<Node> row = new ArrayList<>(List.of(button));
    row.addAll(List.of(others));
    row.add(back);
    buttons(row.toArray(Node[]::new));
  }

  private void buttons(Node... buttons) {
    Row row = new Row(buttons);
    row.getStyleClass().add("panel-buttons");
    root.getChildren().add(row);
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    first.orElse(back).requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }
}
