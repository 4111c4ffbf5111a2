package lanewarden.kiosk.signin;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.Trouble;

/** Who takes over, and the passphrase. */
public final class SignInScreen implements Page {
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

  private final SignInViewModel model;
  private final Texts texts;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final Label place = new Label();
  private final TroubleCard standing;
  private final FlowPane officials = new FlowPane();
  private final PasswordField passphrase = new PasswordField();

  /**
   * @param hint a line under the field, where the event is a demonstration
   * @param protests opens the docket
   * @param people opens the list of officials
   * @param theme turns through the themes
   * @param unseen those whose buttons stand behind {@code goTo}, but whose keys work here too
   * @param goTo lists every screen with its key
   * @param leave ends the program
   */
  public SignInScreen(
      SignInViewModel model,
      Texts texts,
      Optional<String> hint,
      KeyButton protests,
      KeyButton people,
      KeyButton theme,
      List<KeyButton> unseen,
      KeyButton goTo,
      KeyButton leave) {
    this.model = model;
    this.texts = texts;
    place.getStyleClass().add("place");
    place.setId("place");
    place.setText(texts.of("sign-in.opening"));
    Label title = new Label(texts.of("sign-in.title"));
    title.getStyleClass().add("sign-in-title");
    Label who = new Label(texts.of("sign-in.official"));
    PanelFrame.wrap(place, title, who);
    officials.getStyleClass().add("officials");
    officials.setId("officials");
    Label label = new Label(texts.of("sign-in.passphrase"));
    label.setLabelFor(passphrase);
    passphrase.setAccessibleText(texts.of("sign-in.passphrase"));
    passphrase.setId("passphrase");
    passphrase.addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
    TroubleCard card = new TroubleCard(texts);
    card.setId("sign-in-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    card.show(model.trouble().get());
    KeyButton enter = new KeyButton(texts.of("sign-in.act"), KeyCode.ENTER, this::signIn);
    enter.getStyleClass().add("primary");
    enter.setId("sign-in");
    enter.disableProperty().bind(model.busy());
    model
        .busy()
        .addListener(
            (all, before, now) -> enter.rename(texts.of(now ? "sign-in.busy" : "sign-in.act")));
    keys.add(enter, protests, people, theme, goTo, leave);
    unseen.forEach(keys::add);
    Row buttons = new Row(enter, protests, people, theme, goTo, leave);
    buttons.getStyleClass().add("panel-buttons");
    standing = new TroubleCard(texts);
    standing.setId("sign-in-standing");
    VBox panel = new VBox(place, standing, title, who, officials, label, passphrase);
    hint.ifPresent(words -> panel.getChildren().add(hintOf(words)));
    panel.getChildren().addAll(card, buttons);
    panel.getStyleClass().addAll("panel", "sign-in");
    panel.setMaxHeight(VBox.USE_PREF_SIZE);
    root.fill(new StackPane(panel), new Region());
    root.getStyleClass().add("sign-in-screen");
    root.setId("sign-in-screen");
    model.officials().addListener((ListChangeListener<String>) change -> list());
    model.chosen().addListener((all, before, now) -> pickOut());
    list();
  }

  private static Label hintOf(String words) {
    Label hint = new Label(words);
    WrappedWords.in(hint);
    hint.setMinHeight(Label.USE_PREF_SIZE);
    hint.getStyleClass().add("hint");
    hint.setId("hint");
    return hint;
  }

  private void arrows(KeyEvent event) {
    int step =
        switch (event.getCode()) {
          case DOWN -> 1;
          case UP -> -1;
          // The names stand in a row; once something is typed these keys move in it
          case RIGHT -> passphrase.getText().isEmpty() ? 1 : 0;
          case LEFT -> passphrase.getText().isEmpty() ? -1 : 0;
          default -> 0;
        };
    if (step != 0) {
      model.choose(step);
      event.consume();
    }
  }

  private void list() {
    officials
        .getChildren()
        .setAll(
            model.officials().stream()
                .map(
                    name -> {
                      Button button = new Button(name);
                      button.getStyleClass().add("official");
                      button.setAccessibleText(texts.of("sign-in.official.spoken", name));
                      button.setOnAction(
                          e -> {
                            model.chosen().set(name);
                            focus();
                          });
                      return button;
                    })
                .toList());
    pickOut();
  }

  private void pickOut() {
    officials
        .getChildren()
        .forEach(
            node ->
                node.pseudoClassStateChanged(
                    CHOSEN, Objects.equals(((Button) node).getText(), model.chosen().get())));
  }

  private void signIn() {
    char[] entered = passphrase.getText().toCharArray();
    passphrase.clear();
    model.signIn(entered);
  }

  /**
   * Shows which event and station this is, and what the next official is to know.
   *
   * @param trouble as why the one before was signed out
   */
  public void show(String words, Optional<Trouble> trouble) {
    place.setText(words);
    standing.show(trouble);
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    passphrase.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public void typed(String text) {
    passphrase.requestFocus();
    passphrase.appendText(text);
  }
}
