package lanewarden.station;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.written.WrittenRefused;

/** The example files that the program carries with it. */
public final class Packed {
  private static final String RULE_BOOK = "/config/rule-book.toml";
  private static final String PROFILES = "/config/profiles/";
  private static final List<String> PROFILE_FILES =
      List.of("gate-timer.toml", "plain-decimal.toml", "three-gate-timer.toml");

  private Packed() {}

  /**
   * A sentence profile that the program carries.
   *
   * @param file its file name, which no other has
   * @param instrument what speaks so
   */
  public record Profile(String file, String instrument) {}

  /** The sentence profiles, in order. */
  public static List<Profile> profiles() {
    return PROFILE_FILES.stream().map(Packed::profile).toList();
  }

  private static Profile profile(String file) {
    NewEvent.Source source = profileFile(file);
    try {
      return new Profile(file, SentenceProfile.read(file, source.bytes()).name());
    } catch (WrittenRefused e) {
      throw new IllegalStateException(file + " is packed and faulty", e);
    }
  }

  /**
   * A sentence profile to take over.
   *
   * @param file where it lies; where nothing does, the program's own of this name
   * @throws StationException if there is neither, or it cannot be read
   */
  public static NewEvent.Source profileAt(Path file) throws StationException {
    return !Files.exists(file) && PROFILE_FILES.contains(file.toString())
        ? profileFile(file.toString())
        : NewEvent.Source.of(file);
  }

  static NewEvent.Source profileFile(String file) {
    return file(PROFILES + file);
  }

  static NewEvent.Source ruleBook() {
    return file(RULE_BOOK);
  }

  /**
   * Writes the example of a rule book.
   *
   * @param file must not be there yet
   * @throws StationException if it is, or cannot be written
   */
  public static void copyRuleBook(Path file) throws StationException {
    try {
      Files.write(file, ruleBook().bytes(), StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }

  /** A file at its place among the resources. */
  static NewEvent.Source file(String resource) {
    try (InputStream in = Packed.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is not packed with the program");
      }
      return new NewEvent.Source(
          String.valueOf(Path.of(resource).getFileName()), in.readAllBytes());
    } catch (IOException e) {
      throw new IllegalStateException(resource + " cannot be read", e);
    }
  }
}
