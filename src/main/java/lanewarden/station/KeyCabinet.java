package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.journal.PersonName;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.KeyLabel;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Suspension;

/**
 * Where the keys of an event rest, each sealed in a file of its own. No key is ever deleted: one
 * that was suspended is set aside under another name.
 *
 * @param path the folder of the keys
 */
record KeyCabinet(Path path) {
  static final String ORGANIZER_KEY = "organizer.key";
  private static final String ENDING = ".key";
  static final String ASIDE = ".suspended-";

  /** The shortest passphrase taken, in characters. */
  static final int SHORTEST_PASSPHRASE = 8;

  /** The file name of an official's key: letters and digits of the name, in small letters. */
  static String nameOf(String official) {
    String plain = official.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return plain + ENDING;
  }

  /** Where an official's key rests, or would. */
  Path of(String official) {
    return path.resolve(nameOf(official));
  }

  Path organizer() {
    return path.resolve(ORGANIZER_KEY);
  }

  /** The names of the officials who have a key here that was not set aside, in order. */
  List<String> officials() throws StationException {
    return labels().stream().map(KeyLabel::owner).toList();
  }

  /** The labels of their keys, in the order of the names. */
  List<KeyLabel> labels() throws StationException {
    List<KeyLabel> labels = new ArrayList<>();
    for (Path file : files()) {
      String name = String.valueOf(file.getFileName());
      if (name.endsWith(ENDING) && !name.equals(ORGANIZER_KEY)) {
        labels.add(label(file));
      }
    }
    return labels;
  }

  /** Sets a suspended key aside, if it is here. */
  void setAside(Suspension suspension) throws StationException {
    Enrolled official = suspension.official();
    Path file = of(official.name());
    if (Files.isRegularFile(file) && label(file).thumbprint().equals(official.thumbprint())) {
      move(file, path.resolve(nameOf(official.name()) + ASIDE + suspension.sequence()));
    }
  }

  /** Puts a key that was set aside back in its place, if it is here and the place is free. */
  void bringBack(String official, String thumbprint) throws StationException {
    Path place = of(official);
    Optional<Path> aside = Optional.empty();
    for (Path file : files()) {
      if (String.valueOf(file.getFileName()).startsWith(nameOf(official) + ASIDE)
          && label(file).thumbprint().equals(thumbprint)) {
        aside = Optional.of(file);
      }
    }
    if (aside.isPresent() && !Files.exists(place)) {
      move(aside.get(), place);
    }
  }

  private List<Path> files() throws StationException {
    try (Stream<Path> files = Files.list(path)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }

  private static KeyLabel label(Path file) throws StationException {
    try {
      return KeyFile.label(file);
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  static void move(Path from, Path to) throws StationException {
    try {
      Files.move(from, to);
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }

  /** Refuses a name that cannot name a key file here beside those that are taken. */
  static void requireName(String name, boolean taken, String what) throws StationException {
    if (taken || name.codePoints().noneMatch(Character::isLetterOrDigit)) {
      throw StationException.misstep(
          "OFFICIAL-NAME",
          what,
          "The name \"" + name + "\" is blank, reserved, or taken by another official.",
          "Give each official a name of their own, with letters.");
    }
    Optional<String> unseen = new PersonName(name).unseen();
    if (unseen.isPresent()) {
      throw StationException.misstep(
          "OFFICIAL-NAME",
          what,
          "The name \""
              + name
              + "\" holds a character that nobody can see ("
              + unseen.get()
              + "), so that it could pass for another official's.",
          "Type the name anew, by hand; names that are copied bring such characters along.");
    }
  }

  /** Refuses a passphrase that is soon guessed. */
  static void requireLong(String name, char[] passphrase, String what) throws StationException {
    if (passphrase.length < SHORTEST_PASSPHRASE) {
      throw StationException.misstep(
          "PASSPHRASE-SHORT",
          what,
          "The passphrase of " + name + " has fewer than " + SHORTEST_PASSPHRASE + " characters.",
          "Take a longer one; several words are easy to remember.");
    }
  }
}
