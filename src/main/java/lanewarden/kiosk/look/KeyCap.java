package lanewarden.kiosk.look;

import java.util.Map;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;

/**
 * A key as its cap is printed on keyboards of the language that the window speaks.
 *
 * <p>The scene knows the language, so that no control has to be told of it.
 */
public final class KeyCap extends Label {
  private static final Map<KeyCode, String> NAMED =
      Map.of(
          KeyCode.ENTER, "key.enter",
          KeyCode.ESCAPE, "key.escape",
          KeyCode.PAGE_DOWN, "key.page-down",
          KeyCode.PAGE_UP, "key.page-up",
          KeyCode.DELETE, "key.delete",
          KeyCode.INSERT, "key.insert",
          KeyCode.HOME, "key.home",
          KeyCode.END, "key.end");

  private final KeyCode key;

  KeyCap(KeyCode key) {
    super(key.getName());
    this.key = key;
    getStyleClass().add("key-cap");
    sceneProperty()
        .subscribe(
            scene -> Optional.ofNullable(scene).flatMap(KeyCap::texts).ifPresent(this::name));
  }

  /** Lets a scene know its language; for what is put into it from then on. */
  public static void speak(Scene scene, Texts texts) {
    scene.getProperties().put(Texts.class, texts);
  }

  private static Optional<Texts> texts(Scene scene) {
    return scene.getProperties().get(Texts.class) instanceof Texts texts
        ? Optional.of(texts)
        : Optional.empty();
  }

  private void name(Texts texts) {
    String known = NAMED.get(key);
    if (known != null) {
      setText(texts.of(known));
    }
  }
}
