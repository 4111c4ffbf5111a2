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
  private static final String TEXT = "text-percent";
  private static final String VOLUME = "volume-percent";

  private final Path file;

  ScreenChoices(Path file) {
    this.file = file;
  }

  /**
   * What was chosen.
   *
   * @param theme name of the colours, if one was chosen
   * @param language tag of RFC 5646, if one was chosen
   * @param textPercent how large text is, of what the screens are drawn for
   * @param volumePercent how loud the sounds are, of the loudest
   */
  public record Choice(
      Optional<String> theme,
      Optional<String> language,
      Optional<Integer> textPercent,
      Optional<Integer> volumePercent) {

    static final Choice NONE =
        new Choice(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** What was chosen last; nothing where the file is not there or cannot be read. */
  public Choice read() {
    try {
      Properties written = new Properties();
      written.load(new StringReader(WrittenText.of(file.toString(), Files.readAllBytes(file))));
      return new Choice(
          Optional.ofNullable(written.getProperty(THEME)),
          Optional.ofNullable(written.getProperty(LANGUAGE)),
          percent(written, TEXT),
          percent(written, VOLUME));
    } catch (NoSuchFileException e) {
      return Choice.NONE;
    } catch (IOException | WrittenRefused | IllegalArgumentException e) {
      // All of it can be chosen again with a few keys, and is then written anew
      return Choice.NONE;
    }
  }

  private static Optional<Integer> percent(Properties written, String key) {
    return Optional.ofNullable(written.getProperty(key)).map(Integer::valueOf);
  }

  /**
   * Keeps a choice for the next start.
   *
   * @throws StationException if it cannot be written; then the file is as it was
   */
  public void write(Choice choice) throws StationException {
    StringBuilder lines = new StringBuilder();
    choice.theme().ifPresent(theme -> line(lines, THEME, theme));
    choice.language().ifPresent(language -> line(lines, LANGUAGE, language));
    choice.textPercent().ifPresent(percent -> line(lines, TEXT, percent));
    choice.volumePercent().ifPresent(percent -> line(lines, VOLUME, percent));
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      WholeFile.put(file, lines.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }

  private static void line(StringBuilder lines, String key, Object value) {
    lines.append(key).append(" = ").append(value).append('\n');
  }
}
