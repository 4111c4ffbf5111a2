package lanewarden.kiosk.trouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** An unexpected fault: code, details to copy, and the way back to the line. */
public final class FaultPanel extends WayBack {

  /**
   * @param copy takes the details to the clipboard
   * @param leave goes back to the line
   * @param out asks the way out of the full screen, if that is on
   */
  public FaultPanel(
      Trouble fault, Texts texts, Consumer<String> copy, Runnable leave, Optional<Runnable> out) {
    super("fault-panel", new KeyButton(texts.of("trouble.back"), KeyCode.ESCAPE, leave));
    TroubleWords said = TroubleWords.of(fault, texts);
    Label what = new Label(said.what());
    what.getStyleClass().add("panel-title");
    Label remedy = new Label(said.remedy());
    Label code = new Label(texts.of("trouble.code", fault.code()));
    code.getStyleClass().add("fault-code");
    code.setId("fault-code");
    TextArea details = new TextArea(fault.why());
    details.setEditable(false);
    details.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
    details.setAccessibleText(texts.of("trouble.details"));
    details.getStyleClass().add("raw");
    PanelFrame.wrap(what, remedy, code);
    List<KeyButton> more = new ArrayList<>();
    more.add(
        new KeyButton(
            texts.of("trouble.copy"), KeyCode.F2, () -> copy.accept(String.valueOf(fault))));
    out.ifPresent(act -> more.add(new KeyButton(texts.of("out.title"), KeyCode.F12, act)));
    fill(new Node[] {what, remedy, code, details}, more.toArray(KeyButton[]::new));
    root().getStyleClass().add("fault");
  }
}
