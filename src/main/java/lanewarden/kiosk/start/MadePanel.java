package lanewarden.kiosk.start;

import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventForm;

/** That the event was made, and what its organizer does before anything else. */
final class MadePanel implements Page {
  private final PanelFrame root = new PanelFrame("made-panel");
  private final KeyButton open;

  MadePanel(EventForm.Made made, Texts texts, Runnable opens, Runnable leaves) {
    TextField thumbprint = new TextField(made.thumbprint());
    thumbprint.setEditable(false);
    thumbprint.getStyleClass().add("raw");
    thumbprint.setId("thumbprint");
    thumbprint.setAccessibleText(texts.of("made.thumbprint.spoken", made.thumbprint()));
    Label title = new Label(texts.of("made.thumbprint"));
    title.getStyleClass().add("field-title");
    Label publish = new Label(texts.of("made.publish"));
    Label key = new Label(texts.of("made.key"));
    PanelFrame.wrap(publish, key);
    root.getStyleClass().add("form-panel");
    root.say(
        new Label(texts.of("made.title")), new Label(texts.of("made.words", made.folder().path())));
    root.getChildren().addAll(title, thumbprint, publish, key);
    open = new KeyButton(texts.of("made.open"), KeyCode.ENTER, opens);
    root.offer(open, new KeyButton(texts.of("made.later"), KeyCode.ESCAPE, leaves));
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    open.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }
}
