package lanewarden.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.SigningKey;
import lanewarden.roster.Roster;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenRefused;

/**
 * The folder of one event at one station: rule book, roster, settings, profile, keys and ledger.
 *
 * @param path the folder
 */
public record EventFolder(Path path) {

  static final String RULE_BOOK = "rule-book.toml";
  static final String ROSTER = "roster.csv";
  static final String SETTINGS = "station.toml";
  static final String LEDGER = "ledger.sqlite";
  static final String REHEARSAL = "rehearsal.capture";
  static final String KEYS = "keys";

  /** Not with the ending of the officials' keys: nobody signs in with it. */
  static final String REPORT_SEAL = "report.seal";

  /** The ledger file. */
  public Path ledger() {
    return path.resolve(LEDGER);
  }

  /** The rule book as its organizer writes it; the ledger says which one is in force. */
  public Path ruleBookFile() {
    return path.resolve(RULE_BOOK);
  }

  /** Where the key rests that seals reports; an event made by an older version has none. */
  public Path reportSeal() {
    return path.resolve(KEYS).resolve(REPORT_SEAL);
  }

  /** The ledger at a path: the file itself, or the one in the event folder there. */
  public static Path ledgerAt(Path ledgerOrFolder) {
    return Files.isDirectory(ledgerOrFolder)
        ? new EventFolder(ledgerOrFolder).ledger()
        : ledgerOrFolder;
  }

  /** Whether an event was made here. */
  public boolean isMade() {
    return Files.isRegularFile(ledger());
  }

  /**
   * Refuses while somebody writes into the event's ledger, as an open line does; so that nobody is
   * asked for a passphrase in vain.
   *
   * @throws StationException {@code LEDGER-IN-USE}
   */
  public void requireUnused() throws StationException {
    try {
      requireNoWriter();
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  /** The same, as the ledger refuses it. */
  void requireNoWriter() throws LedgerException {
    if (isMade()) {
      try {
        Ledger.requireUnused(ledger());
      } catch (LedgerException e) {
        // Whatever else keeps a lock from being taken keeps no line open
        if (e.code().equals("LEDGER-IN-USE")) {
          throw e;
        }
      }
    }
  }

  /** Whether there are settings: a ledger that was handed on lies alone. */
  public boolean hasSettings() {
    return Files.isRegularFile(path.resolve(SETTINGS));
  }

  /** The station's settings, as the file says now. */
  public StationSettings settings() throws StationException {
    return read(SETTINGS, StationSettings::read);
  }

  /** The rule book, as the file says now; the ledger says which one is in force. */
  RuleBook ruleBook() throws StationException {
    return read(RULE_BOOK, RuleBook::read);
  }

  /** The roster, as the file says now. */
  Roster roster() throws StationException {
    return read(ROSTER, Roster::read);
  }

  /** Settings at a path: the file itself, or the one in the event folder there. */
  static StationSettings settingsAt(Path settingsOrFolder) throws StationException {
    return Files.isDirectory(settingsOrFolder)
        ? new EventFolder(settingsOrFolder).settings()
        : read(settingsOrFolder, StationSettings::read);
  }

  /** The settings with their text and the profiles that they name. */
  StationPapers papers() throws StationException {
    return read(SETTINGS, this::papers);
  }

  private StationPapers papers(String file, byte[] bytes) throws WrittenRefused, StationException {
    StationSettings settings = StationSettings.read(file, bytes);
    return new StationPapers(
        settings,
        new String(bytes, StandardCharsets.UTF_8),
        read(settings.profile(), SentenceProfile::read),
        settings.second().isEmpty()
            ? Optional.empty()
            : Optional.of(read(settings.second().get().profile(), SentenceProfile::read)));
  }

  /** The sentence profile that the settings name. */
  public SentenceProfile profile() throws StationException {
    return read(settings().profile(), SentenceProfile::read);
  }

  /** What the archers of a rehearsal shoot, if the folder has it. */
  Optional<Capture> rehearsal() throws StationException {
    return Files.exists(path.resolve(REHEARSAL))
        ? Optional.of(read(REHEARSAL, Capture::read))
        : Optional.empty();
  }

  /** The names of the officials who have a key here, in alphabetical order. */
  public List<String> officials() throws StationException {
    return keys().officials();
  }

  /** Where the keys rest. */
  KeyCabinet keys() {
    return new KeyCabinet(path.resolve(KEYS));
  }

  /**
   * Opens an official's key.
   *
   * @param passphrase is wiped
   * @param clock for the waits after wrong ones
   * @throws StationException if there is no such official, or the passphrase is wrong
   */
  SigningKey key(String official, char[] passphrase, Clock clock) throws StationException {
    try {
      requireOfficial(official);
    } catch (StationException refused) {
      Arrays.fill(passphrase, '\0');
      throw refused;
    }
    return new KeyLock(keys().of(official), clock).open(passphrase);
  }

  /** Refuses the name of an official who has no key here. */
  void requireOfficial(String official) throws StationException {
    if (!Files.isRegularFile(keys().of(official))) {
      throw StationException.misstep(
          "NO-SUCH-OFFICIAL",
          "Nobody called \"" + official + "\" has a key here.",
          "The officials of this event are " + String.join(", ", officials()) + ".",
          "Write the name as it stands there, or have the organizer enrol it.");
    }
  }

  /** Where the organizer's key is made; the organizer is told to keep it somewhere else. */
  public Path organizerKey() {
    return keys().organizer();
  }

  private <T> T read(String name, Reader<T> reader) throws StationException {
    return read(path.resolve(name), reader);
  }

  private static <T> T read(Path file, Reader<T> reader) throws StationException {
    try {
      return reader.read(file.toString(), Files.readAllBytes(file));
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  @FunctionalInterface
  private interface Reader<T> {
    T read(String file, byte[] bytes) throws WrittenRefused, StationException;
  }
}
