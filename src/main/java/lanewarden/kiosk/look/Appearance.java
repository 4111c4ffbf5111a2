package lanewarden.kiosk.look;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.sound.Volume;
import lanewarden.station.ScreenChoices;

/**
 * The colours, the language, the text size and the loudness of every window; on the screen's
 * thread.
 */
public final class Appearance {
  private final ObjectProperty<Theme> theme;
  private final ObjectProperty<Language> language;
  private final ObjectProperty<TextSize> textSize = new SimpleObjectProperty<>(TextSize.PLAIN);
  private final ObjectProperty<Volume> volume = new SimpleObjectProperty<>(Volume.MIDDLE);

  /** In these, with text as drawn and sounds of middle loudness. */
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
    Appearance look =
        new Appearance(
            theme.orElse(Theme.DAY), chosen.language().flatMap(Language::of).orElse(spoken));
    chosen.textPercent().flatMap(TextSize::of).ifPresent(look.textSize::set);
    chosen.volumePercent().flatMap(Volume::of).ifPresent(look.volume::set);
    return look;
  }

  /** What is to be kept for the next start. */
  public ScreenChoices.Choice chosen() {
    return new ScreenChoices.Choice(
        Optional.of(theme.get().word()),
        Optional.of(language.get().tag()),
        Optional.of(textSize.get().percent()),
        Optional.of(volume.get().percent()));
  }

  /**
   * Another that changes with this one, and this with it, in all but the language; it does not keep
   * this one alive, nor this one it.
   */
  public Appearance beside(Language spoken) {
    Appearance other = new Appearance(theme.get(), spoken);
    other.theme.bindBidirectional(theme);
    other.textSize.bindBidirectional(textSize);
    other.volume.bindBidirectional(volume);
    return other;
  }

  /** The colours. */
  public ObjectProperty<Theme> theme() {
    return theme;
  }

  /** The language. */
  public ObjectProperty<Language> language() {
    return language;
  }

  /** How large text is. */
  public ObjectProperty<TextSize> textSize() {
    return textSize;
  }

  /** How loud the sounds are. */
  public ObjectProperty<Volume> volume() {
    return volume;
  }

  /** Runs whenever something else is chosen. */
  public void whenChosen(Runnable act) {
    theme.subscribe((before, now) -> act.run());
    language.subscribe((before, now) -> act.run());
    textSize.subscribe((before, now) -> act.run());
    volume.subscribe((before, now) -> act.run());
  }
}
