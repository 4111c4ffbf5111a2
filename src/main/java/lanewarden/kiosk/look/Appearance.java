package lanewarden.kiosk.look;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.station.ScreenChoices;

/** The colours and the language of every window; on the screen's thread. */
public final class Appearance {
  private final ObjectProperty<Theme> theme;
  private final ObjectProperty<Language> language;

  /** In these. */
  public Appearance(Theme theme, Language language) {
    this.theme = new SimpleObjectProperty<>(theme);
    this.language = new SimpleObjectProperty<>(language);
  }

  /**
   * As it was chosen last; else by day, in the system's language where the program speaks it and in
   * English where it does not.
   *
   * @param system the system's language
   */
  public static Appearance of(ScreenChoices.Choice chosen, Locale system) {
    Optional<Theme> theme =
        chosen
            .theme()
            .flatMap(
                word -> Arrays.stream(Theme.values()).filter(t -> t.word().equals(word)).findAny());
    Language spoken = Language.of(system.toLanguageTag()).orElse(Language.ENGLISH);
    return new Appearance(
        theme.orElse(Theme.DAY), chosen.language().flatMap(Language::of).orElse(spoken));
  }

  /** The colours. */
  public ObjectProperty<Theme> theme() {
    return theme;
  }

  /** The language. */
  public ObjectProperty<Language> language() {
    return language;
  }

  /** Runs whenever another is chosen. */
  public void whenChosen(Runnable act) {
    theme.subscribe((before, now) -> act.run());
    language.subscribe((before, now) -> act.run());
  }
}
