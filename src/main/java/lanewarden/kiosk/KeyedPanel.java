package lanewarden.kiosk;

import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.KeyedPage;
import lanewarden.kiosk.look.PanelFrame;

/** A panel that is worked by its keys alone, in the frame of all panels. */
abstract class KeyedPanel extends KeyedPage {
  final PanelFrame root;

  /**
   * @param styled its class in the stylesheets
   * @param back leaves things as they are; offered by whoever fills the panel, as the last
   */
  KeyedPanel(String styled, KeyButton back) {
    super(back);
    root = new PanelFrame(styled);
  }

  /** Ends the panel with the way back. */
  final void offerBack() {
    root.offer(back());
  }

  @Override
  public final Parent root() {
    return root;
  }

  @Override
  public final boolean press(KeyCode code) {
    return super.press(code) || root.press(code);
  }
}
