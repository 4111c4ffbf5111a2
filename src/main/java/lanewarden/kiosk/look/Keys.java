package lanewarden.kiosk.look;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.input.KeyCode;

/** The key buttons of one screen or panel, which their keys press from anywhere on it. */
public final class Keys {
  private final List<KeyButton> buttons = new ArrayList<>();

  /** Adds buttons. */
  public void add(KeyButton... more) {
    buttons.addAll(Arrays.asList(more));
  }

  /**
   * Presses the button with this key, unless it is disabled.
   *
   * @return whether there is such a button
   */
  public boolean press(KeyCode code) {
    List<KeyButton> meant = buttons.stream().filter(b -> b.key() == code).toList();
    // A disabled button ignores its being fired
    meant.forEach(KeyButton::fire);
    return !meant.isEmpty();
  }
}
