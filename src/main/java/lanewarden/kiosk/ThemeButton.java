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
        new KeyButton(
            words(theme.get().next(), texts), KeyCode.F7, () -> theme.set(theme.get().next()));
    theme.addListener((all, before, now) -> button.rename(words(now.next(), texts)));
    return button;
  }

  /** Like every button it says what it does: which theme comes, not which one is there. */
  private static String words(Theme next, Texts texts) {
    return switch (next) {
      case DAY -> texts.of("theme.day");
      case NIGHT -> texts.of("theme.night");
      case SUNLIGHT -> texts.of("theme.sunlight");
    };
  }
}
