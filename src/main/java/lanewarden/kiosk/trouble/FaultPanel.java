package lanewarden.kiosk.trouble;

import java.util.function.Consumer;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** An unexpected fault: code, details to copy, and the way back to the line. */
public final class FaultPanel implements Page {
  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final KeyButton back;

  /**
   * @param copy takes the details to the clipboard
   * @param leave goes back to the line
   */
  public FaultPanel(Trouble fault, Texts texts, Consumer<String> copy, Runnable leave) {
    Label what = new Label(fault.what());
    what.getStyleClass().add("panel-title");
    Label remedy = new Label(fault.remedy());
    Label code = new Label(texts.of("trouble.code", fault.code()));
    code.getStyleClass().add("fault-code");
    TextArea details = new TextArea(fault.why());
    details.setEditable(false);
    details.setAccessibleText(texts.of("trouble.details"));
    details.getStyleClass().add("raw");
    back = new KeyButton(texts.of("trouble.back"), KeyCode.ESCAPE, leave);
    back.getStyleClass().add("primary");
    KeyButton copying =
        new KeyButton(
            texts.of("trouble.copy"), KeyCode.F2, () -> copy.accept(String.valueOf(fault)));
    keys.add(back, copying);
    HBox buttons = new HBox(back, copying);
    buttons.getStyleClass().add("panel-buttons");
    for (Label label : new Label[] {what, remedy, code}) {
      label.setWrapText(true);
      label.setMinHeight(Label.USE_PREF_SIZE);
    }
    root.getChildren().addAll(what, remedy, code, details, buttons);
    root.getStyleClass().addAll("panel", "fault");
    root.setId("fault-panel");
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    back.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public void typed(String text) {
    // Nothing is typed into a fault; a scanned bib must not close it unseen
  }
}
