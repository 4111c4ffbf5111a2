package lanewarden.kiosk.look;

import javafx.scene.input.KeyCode;

/**
 * A page that is worked by its keys alone. The way back has the focus, and what is typed means
 * nothing: a bib scanned by mistake changes nothing here.
 */
public abstract class KeyedPage implements Page {
  private final Keys keys = new Keys();
  private final KeyButton back;

  /**
   * @param back leaves things as they are, and has the focus
   */
  protected KeyedPage(KeyButton back) {
    this.back = back;
  }

  /** What the keys press. */
  protected final Keys keys() {
    return keys;
  }

  /** The way back. */
  protected final KeyButton back() {
    return back;
  }

  @Override
  public final void focus() {
    back.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public final void typed(String text) {
    // Letters and digits mean nothing here
  }
}
