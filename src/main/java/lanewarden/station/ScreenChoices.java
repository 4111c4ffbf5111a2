package lanewarden.station;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/**
 * How the user's screens look and speak, kept in a small file of properties. Nothing hangs on it:
 * without it, or where it is broken, the screens begin as they come.
 *
 * <p>For one thread.
 */
public final class ScreenChoices {
  private static final String THEME = "theme";
  private static final String LANGUAGE = "language";

  private final Path file;

  ScreenChoices(Path file) {
    this.file = file;
  }

  /**
   * What was chosen.
   *
   * @param theme name of the colours, if one was chosen
   * @param language tag of RFC 5646, if one was chosen
   */
  public record Choice(Optional<String> theme, Optional<String> language) {}

  /** What was chosen last; nothing where the file is not there or cannot be read. */
  public Choice read() {
    try {
      Properties written = new Properties();
      written.load(new StringReader(WrittenText.of(file.toString(), Files.readAllBytes(file))));
      return new Choice(
          Optional.ofNullable(written.getProperty(THEME)),
          Optional.ofNullable(written.getProperty(LANGUAGE)));
    } catch (NoSuchFileException e) {
      return new Choice(Optional.empty(), Optional.empty());
    } catch (IOException | WrittenRefused | IllegalArgumentException e) {
      // Colours and language can be chosen again with one key, and are then written anew
      return new Choice(Optional.empty(), Optional.empty());
    }
  }

  /**
   * Keeps a choice for the next start.
   *
   * @throws StationException if it cannot be written; then the file is as it was
   */
  public void write(String theme, String language) throws StationException {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      String lines = THEME + " = " + theme + "\n" + LANGUAGE + " = " + language + "\n";
      WholeFile.put(file, lines.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }
}
