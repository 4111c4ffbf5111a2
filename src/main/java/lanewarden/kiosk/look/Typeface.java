package lanewarden.kiosk.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/**
 * The typefaces that the program brings along; all their figures have the same width.
 *
 * <p>Without any typeface on the machine the toolkit fails at its first text, so they are loaded
 * before anything is shown.
 */
public final class Typeface {
  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
  private static final List<String> FILES =
      List.of(
          "DejaVuSans.ttf",
          "DejaVuSans-Bold.ttf",
          "DejaVuSansCondensed-Bold.ttf",
          "DejaVuSansMono.ttf");

  private static boolean loaded;

  private Typeface() {}

  /**
   * Makes the typefaces known to the stylesheets, once; on return they are. Any thread may call.
   */
  public static synchronized void load() {
    if (loaded) {
      return;
    }
    for (String file : FILES) {
      try (InputStream in = Typeface.class.getResourceAsStream(FOLDER + file)) {
        if (in == null || Font.loadFont(in, 12) == null) {
          throw new IllegalStateException("the typeface " + file + " is not in the program");
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    loaded = true;
  }
}
