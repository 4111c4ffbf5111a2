package lanewarden.kiosk.trouble;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** A fault that keeps a passphrase from being proved, and the way out that is open for it. */
public final class StuckPanel extends WayBack {

  /**
   * @param out leaves without a passphrase
   * @param stay goes back
   */
  public StuckPanel(Trouble trouble, Texts texts, Runnable out, Runnable stay) {
    super("stuck-panel", new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, stay));
    Label title = new Label(texts.of("out.stuck.title"));
    title.getStyleClass().add("panel-title");
    Label words = new Label(texts.of("out.stuck.words"));
    PanelFrame.wrap(title, words);
    TroubleCard card = new TroubleCard(texts);
    card.show(Optional.of(trouble));
    KeyButton leave = new KeyButton(texts.of("out.stuck.act"), KeyCode.F12, out);
    leave.setId("leave-all-the-same");
    fill(new Node[] {title, words, card}, leave);
  }
}
