package lanewarden.kiosk.trouble;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** Why something that was asked for did not open, and the way back. */
public final class TroublePanel extends WayBack {

  /**
   * @param leave goes back
   */
  public TroublePanel(Trouble trouble, Texts texts, Runnable leave) {
    super("trouble-panel", new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave));
    TroubleCard card = new TroubleCard(texts);
    card.show(Optional.of(trouble));
    card.setId("trouble-card");
    fill(new Node[] {card});
  }
}
