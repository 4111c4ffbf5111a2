package lanewarden.station;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The folder in which a system keeps what a program remembers for its user; it may not be there.
 *
 * @param path the folder
 */
public record UserFolder(Path path) {
  private static final String NAME = "lanewarden";

  /**
   * As the system has it: %APPDATA% on Windows, Library/Application Support on a Mac, and elsewhere
   * where the XDG Base Directory Specification 0.8 says.
   *
   * @param system the system's name, as the property os.name
   * @param home the user's own folder
   * @param environment the program's environment
   */
  public static UserFolder of(String system, Path home, Map<String, String> environment) {
    String word = system.toLowerCase(Locale.ROOT);
    if (word.startsWith("windows")) {
      return in(named(environment, "APPDATA").orElse(home.resolve("AppData").resolve("Roaming")));
    }
    if (word.startsWith("mac")) {
      return in(home.resolve("Library").resolve("Application Support"));
    }
    // The specification has a path that is not absolute passed over
    return in(
        named(environment, "XDG_CONFIG_HOME")
            .filter(Path::isAbsolute)
            .orElse(home.resolve(".config")));
  }

  private static Optional<Path> named(Map<String, String> environment, String variable) {
    return Optional.ofNullable(environment.get(variable)).filter(p -> !p.isBlank()).map(Path::of);
  }

  private static UserFolder in(Path parent) {
    return new UserFolder(parent.resolve(NAME));
  }

  /** Where one practises. */
  public Path practice() {
    return path.resolve("practice");
  }

  /** Where the program's log is. */
  Path log() {
    return path.resolve("log");
  }

  /** The events opened last. */
  public LastEvents lastEvents() {
    return new LastEvents(path.resolve("last-events.txt"));
  }

  /** How the screens look and speak. */
  public ScreenChoices screenChoices() {
    return new ScreenChoices(path.resolve("screens.properties"));
  }
}
