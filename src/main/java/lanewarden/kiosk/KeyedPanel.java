package lanewarden.kiosk;

import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;

/**
 * A panel that is worked by its keys alone. The way back has the focus, so that a bib scanned by
 * mistake ends here and changes nothing.
 */
abstract class KeyedPanel implements Page {
  final PanelFrame root;
  final Keys keys = new Keys();
  private final KeyButton back;

  /**
   * @param styled its class in the stylesheets
   * @param back leaves things as they are; offered by whoever fills the panel, as the last
   */
  KeyedPanel(String styled, KeyButton back) {
    root = new PanelFrame(styled);
    this.back = back;
  }

  /** Ends the panel with the way back. */
  final void offerBack() {
    root.offer(back);
  }

  @Override
  public final Parent root() {
    return root;
  }

  @Override
  public final void focus() {
    back.requestFocus();
  }

  @Override
  public final boolean press(KeyCode code) {
    return keys.press(code) || root.press(code);
  }

  @Override
  public final void typed(String text) {
    // Letters and digits mean nothing here
  }
}
