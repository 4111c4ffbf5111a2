package lanewarden.kiosk.look;

import javafx.scene.Parent;
import javafx.scene.input.KeyCode;

/** A screen, or a panel over it, that has the keys while it is uppermost. */
public interface Page {

  /** What it shows. */
  Parent root();

  /** Puts the focus where typing should go. */
  void focus();

  /**
   * Takes a key that was pressed without modifiers.
   *
   * @return whether the key means something here
   */
  boolean press(KeyCode code);

  /** Whether it may be left for something else without anything being lost: nothing was typed. */
  default boolean isPassable() {
    return false;
  }

  /**
   * Takes text that was typed, or scanned, while nothing that takes text had the focus. On most
   * pages it means nothing: nobody is looked for there, or only fields are written in.
   */
  default void typed(String text) {}
}
