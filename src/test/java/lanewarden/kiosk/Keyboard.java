package lanewarden.kiosk;

import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.event.EventType;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Sends a scene what a keyboard sends it, to whatever has the focus; from any thread. */
final class Keyboard {

  private Keyboard() {}

  /** Presses a key and lets it go. */
  static void press(Scene scene, KeyCode code) throws Exception {
    Booth.call(
        () -> {
          strike(scene, code);
          return true;
        });
  }

  /** Types text, letter after letter. */
  static void type(Scene scene, String text) throws Exception {
    Booth.call(
        () -> {
          write(scene, text);
          return true;
        });
  }

  /** Types text and presses enter, all at once. */
  static void scan(Scene scene, String text) throws Exception {
    Booth.call(
        () -> {
          write(scene, text);
          strike(scene, KeyCode.ENTER);
          return true;
        });
  }

  private static void strike(Scene scene, KeyCode code) {
    send(scene, KeyEvent.KEY_PRESSED, "", code);
    send(scene, KeyEvent.KEY_TYPED, code == KeyCode.ENTER ? "\r" : KeyEvent.CHAR_UNDEFINED, code);
    send(scene, KeyEvent.KEY_RELEASED, "", code);
  }

  private static void write(Scene scene, String text) {
    text.codePoints()
        .mapToObj(Character::toString)
        .forEach(one -> send(scene, KeyEvent.KEY_TYPED, one, KeyCode.UNDEFINED));
  }

  private static void send(Scene scene, EventType<KeyEvent> type, String character, KeyCode code) {
    EventTarget target = scene.getFocusOwner() == null ? scene : scene.getFocusOwner();
    KeyCode given = type == KeyEvent.KEY_TYPED ? KeyCode.UNDEFINED : code;
    Event.fireEvent(target, new KeyEvent(type, character, "", given, false, false, false, false));
  }
}
