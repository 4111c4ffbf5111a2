package lanewarden.kiosk;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javax.imageio.ImageIO;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.look.Theme;

/**
 * Where pictures of screens are put, each in every theme.
 *
 * @param folder must be there
 */
record Sketchbook(Path folder) {

  /** The property that says in which language they are drawn. */
  static final String LANGUAGE = "pictures.language";

  /** The language that is spoken: English, unless pictures in another are asked for. */
  static Language language() {
    return Language.of(System.getProperty(LANGUAGE, "en")).orElseThrow();
  }

  /** How large text is: as drawn, unless pictures with larger text are asked for. */
  static TextSize textSize() {
    return TextSize.of(Integer.getInteger("pictures.text", 100)).orElseThrow();
  }

  /** How many there are of each screen. */
  static int perScreen() {
    return themes().size();
  }

  private static List<Theme> themes() {
    List<String> asked = List.of(System.getProperty("pictures.themes", "").split(","));
    List<Theme> found =
        Arrays.stream(Theme.values()).filter(theme -> asked.contains(theme.word())).toList();
    return found.isEmpty() ? List.of(Theme.values()) : found;
  }

  /** Draws the official's screen, and beside a line the board. */
  void take(Booth booth, String name) throws Exception {
    for (Theme theme : themes()) {
      Booth.call(
          () -> {
            booth.front.look().theme().set(theme);
            return true;
          });
      booth.settle();
      write(booth.front.official(), name + "-" + theme.word());
      if (name.startsWith("line-")) {
        write(booth.front.board(), name.replace("line-", "board-") + "-" + theme.word());
      }
    }
  }

  /** Draws the screen of the program as it is opened from a menu. */
  void take(Doorstep door, String name) throws Exception {
    for (Theme theme : themes()) {
      Booth.call(
          () -> {
            door.entrance.theme().set(theme);
            return true;
          });
      door.settle();
      write(door.scene(), name + "-" + theme.word());
    }
  }

  /** Draws the board beside that. */
  void takeBoard(Doorstep door, String name) throws Exception {
    for (Theme theme : themes()) {
      Booth.call(
          () -> {
            door.entrance.theme().set(theme);
            return true;
          });
      door.settle();
      write(
          Booth.call(() -> door.entrance.windows().orElseThrow().front().board()),
          name + "-" + theme.word());
    }
  }

  private void write(Scene scene, String name) throws Exception {
    BufferedImage image = Booth.call(() -> SwingFXUtils.fromFXImage(scene.snapshot(null), null));
    ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
  }
}
