package lanewarden.kiosk.rulebook;

import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** Asks the organizer for the reason and the passphrase that put a rule book in force. */
final class AdoptPanel implements Page {
  private final AdoptViewModel model;
  private final PanelFrame root = new PanelFrame("adopt-panel");
  private final TextField reason = new TextField();
  private final PasswordField passphrase = new PasswordField();

  AdoptPanel(AdoptViewModel model, Texts texts, Runnable leave) {
    this.model = model;
    Label title = new Label(texts.of("adopt.title"));
    Label words = new Label(texts.of("adopt.words"));
    reason.textProperty().bindBidirectional(model.reason());
    TroubleCard card = new TroubleCard(texts);
    card.setId("adopt-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    KeyButton act = new KeyButton(texts.of("adopt.act"), KeyCode.ENTER, this::adopt);
    act.disableProperty().bind(model.busy());
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    root.say(title, words);
    add(reason, "adopt-reason", texts.of("adopt.reason"));
    add(passphrase, "adopt-passphrase", texts.of("adopt.passphrase"));
    root.getChildren().add(card);
    root.offer(act, back);
  }

  private void add(TextField field, String id, String words) {
    Label label = new Label(words);
    label.setLabelFor(field);
    field.setAccessibleText(words);
    field.setId(id);
    root.getChildren().addAll(label, field);
  }

  /** Enter in the first field leads to the second. */
  private void adopt() {
    if (passphrase.getText().isEmpty()) {
      passphrase.requestFocus();
      return;
    }
    char[] entered = passphrase.getText().toCharArray();
    passphrase.clear();
    model.adopt(entered);
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    (reason.getText().isBlank() ? reason : passphrase).requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }

  @Override
  public void typed(String text) {
    // Only its fields take text
  }
}
