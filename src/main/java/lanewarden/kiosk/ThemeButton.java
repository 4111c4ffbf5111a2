package lanewarden.kiosk;

import javafx.beans.property.ObjectProperty;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;

/** The buttons that turn through the themes, all of them saying which one it is now. */
final class ThemeButton {

  private ThemeButton() {}

  /** One more of them. */
  static KeyButton of(ObjectProperty<Theme> theme, Texts texts) {
    KeyButton button =
        new KeyButton(words(theme.get(), texts), KeyCode.F7, () -> theme.set(theme.get().next()));
    theme.addListener((all, before, now) -> button.rename(words(now, texts)));
    return button;
  }

  private static String words(Theme now, Texts texts) {
    return switch (now) {
      case DAY -> texts.of("theme.day");
      case NIGHT -> texts.of("theme.night");
      case SUNLIGHT -> texts.of("theme.sunlight");
    };
  }
}
