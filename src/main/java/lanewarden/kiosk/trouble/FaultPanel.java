package lanewarden.kiosk.trouble;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** An unexpected fault: code, details to copy, and the way back to the line. */
public final class FaultPanel extends WayBack {

  /**
   * @param copy takes the details to the clipboard
   * @param leave goes back to the line
   */
  public FaultPanel(Trouble fault, Texts texts, Consumer<String> copy, Runnable leave) {
    super("fault-panel", new KeyButton(texts.of("trouble.back"), KeyCode.ESCAPE, leave));
    Label what = new Label(fault.what());
    what.getStyleClass().add("panel-title");
    Label remedy = new Label(fault.remedy());
    Label code = new Label(texts.of("trouble.code", fault.code()));
    code.getStyleClass().add("fault-code");
    code.setId("fault-code");
    TextArea details = new TextArea(fault.why());
    details.setEditable(false);
    details.setAccessibleText(texts.of("trouble.details"));
    details.getStyleClass().add("raw");
    for (Label label : new Label[] {what, remedy, code}) {
      label.setWrapText(true);
      label.setMinHeight(Label.USE_PREF_SIZE);
    }
    fill(
        new Node[] {what, remedy, code, details},
        new KeyButton(
            texts.of("trouble.copy"), KeyCode.F2, () -> copy.accept(String.valueOf(fault))));
    root().getStyleClass().add("fault");
  }
}
