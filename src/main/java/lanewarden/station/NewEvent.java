package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/**
 * An event to be made: the organizer's act before anything else.
 *
 * <p>The folder appears whole or not at all: everything is made in a folder beside it, then moved.
 *
 * @param ruleBook the rule book to copy
 * @param roster the roster to copy
 * @param profile the sentence profile to copy
 * @param station the station's name
 * @param kind where readings come from
 * @param port path or name of the serial port; empty without one
 * @param organizer whose key is the root of trust
 * @param officials who may sign at the station, one or more; judges among them
 * @param rehearsal a capture for the archers of a rehearsal, if there is one
 */
public record NewEvent(
    Source ruleBook,
    Source roster,
    Source profile,
    String station,
    StationSettings.Kind kind,
    String port,
    Person organizer,
    List<Person> officials,
    Optional<Source> rehearsal) {

  /** An event without a capture for rehearsals. */
  public NewEvent(
      Source ruleBook,
      Source roster,
      Source profile,
      String station,
      StationSettings.Kind kind,
      String port,
      Person organizer,
      List<Person> officials) {
    this(ruleBook, roster, profile, station, kind, port, organizer, officials, Optional.empty());
  }

  /** A file to take into the event folder: its name, for messages and to keep, and its content. */
  public static final class Source {
    private final String name;
    private final byte[] bytes;

    /** Content that is no file yet, under the name it shall have. */
    public Source(String name, byte[] bytes) {
      this.name = name;
      this.bytes = bytes.clone();
    }

    /** The file at a path. */
    public static Source of(Path file) throws StationException {
      try {
        return new Source(file.toString(), Files.readAllBytes(file));
      } catch (IOException e) {
        throw StationException.of(e);
      }
    }

    String name() {
      return name;
    }

    byte[] bytes() {
      return bytes;
    }

    String fileName() {
      return String.valueOf(Path.of(name).getFileName());
    }
  }

  /** Somebody who gets a key, and the passphrase that seals it. */
  public static final class Person {
    private final String name;
    private final char[] passphrase;
    private final Role role;

    /** The passphrase is wiped when the event is made. */
    public Person(String name, char[] passphrase) {
      this(name, passphrase, Role.OFFICIAL);
    }

    private Person(String name, char[] passphrase, Role role) {
      this.name = name.strip();
      this.passphrase = passphrase;
      this.role = role;
    }

    /** An official who may rule on protests too. */
    public static Person judge(String name, char[] passphrase) {
      return new Person(name, passphrase, Role.JUDGE);
    }

    String name() {
      return name;
    }

    char[] passphrase() {
      return passphrase;
    }
  }

  static final String NOTHING_MADE = "No event was made.";
  private static final int LONGEST_NAME = 80;

  /** The shortest passphrase taken, in characters. */
  public static final int SHORTEST_PASSPHRASE = KeyCabinet.SHORTEST_PASSPHRASE;

  /**
   * Makes the event.
   *
   * @param folder must not exist, or be empty
   * @throws StationException if a file is faulty, the folder is taken or cannot be written; then
   *     nothing is left behind
   */
  public EventFolder make(Path folder, Clock clock, LongSupplier nanos, SecureRandom random)
      throws StationException {
    checkPeople();
    requireName(station, "station", "STATION-NAME");
    if (kind == StationSettings.Kind.SERIAL) {
      requireName(port, "port", "PORT-NAME");
    }
    Path target = folder.toAbsolutePath().normalize();
    try {
      RuleBook book = RuleBook.read(ruleBook.name(), ruleBook.bytes());
      Roster competitors = Roster.read(roster.name(), roster.bytes());
      SentenceProfile.read(profile.name(), profile.bytes());
      if (rehearsal.isPresent()) {
        Capture.read(rehearsal.get().name(), rehearsal.get().bytes());
      }
      checkDivisions(book, competitors);
      requireFree(target);
      Path parent = target.getParent();
      Files.createDirectories(parent == null ? target : parent);
      Path draft = Files.createTempDirectory(parent, "." + target.getFileName() + "-");
      boolean made = false;
      try {
        fill(new EventFolder(draft), book, competitors, clock, nanos, random);
        Files.deleteIfExists(target);
        Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
        made = true;
      } finally {
        if (!made) {
          Leftovers.remove(draft);
        }
      }
    } catch (WrittenRefused e) {
      throw StationException.of(e);
    } catch (IOException | LedgerException e) {
      throw StationException.of("No event was made in " + target + ".", e);
    }
    return new EventFolder(target);
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> content = Files.list(folder)) {
      return content.findAny().isEmpty();
    }
  }

  private void fill(
      EventFolder draft,
      RuleBook book,
      Roster competitors,
      Clock clock,
      LongSupplier nanos,
      SecureRandom random)
      throws IOException, LedgerException {
    Path path = draft.path();
    Files.write(path.resolve(EventFolder.RULE_BOOK), ruleBook.bytes());
    Files.write(path.resolve(EventFolder.ROSTER), roster.bytes());
    Files.write(path.resolve(profile.fileName()), profile.bytes());
    Files.writeString(
        path.resolve(EventFolder.SETTINGS),
        new StationSettings(station, profile.fileName(), kind, port).toToml());
    if (rehearsal.isPresent()) {
      Files.write(path.resolve(EventFolder.REHEARSAL), rehearsal.get().bytes());
    }
    Path keys = Files.createDirectory(path.resolve(EventFolder.KEYS));
    SigningKey root = SigningKey.generate(random);
    try (Ledger ledger = Ledger.create(draft.ledger(), station, root, clock, nanos)) {
      for (Person official : officials) {
        SigningKey key = SigningKey.generate(random);
        KeyFile.seal(
            keys.resolve(KeyCabinet.nameOf(official.name())),
            key,
            official.name(),
            official.passphrase(),
            random);
        ledger.enrol(root, key.publicKey(), official.name(), official.role);
      }
      ledger.append(
          root,
          List.of(
              FactJson.draft(
                  new Fact.RuleBookAdopted(EventFolder.RULE_BOOK, book.sha256(), book.text())),
              FactJson.draft(
                  new Fact.RosterAdopted(
                      EventFolder.ROSTER, competitors.sha256(), competitors.text())),
              FactJson.draft(
                  ReportSeal.make(
                      draft,
                      station,
                      organizer.name(),
                      organizer.passphrase().clone(),
                      clock,
                      random))));
    }
    KeyFile.seal(
        keys.resolve(KeyCabinet.ORGANIZER_KEY),
        root,
        organizer.name(),
        organizer.passphrase(),
        random);
  }

  private void checkPeople() throws StationException {
    Set<String> files = new HashSet<>(Set.of(KeyCabinet.ORGANIZER_KEY));
    if (officials.isEmpty()) {
      throw StationException.misstep(
          "NO-OFFICIAL",
          NOTHING_MADE,
          "It has no official, so nobody could sign.",
          "Name at least one official.");
    }
    for (Person official : officials) {
      KeyCabinet.requireName(
          official.name(), !files.add(KeyCabinet.nameOf(official.name())), NOTHING_MADE);
      checkPassphrase(official);
    }
    checkPassphrase(organizer);
  }

  private static void checkPassphrase(Person person) throws StationException {
    KeyCabinet.requireLong(person.name(), person.passphrase(), NOTHING_MADE);
  }

  private static void checkDivisions(RuleBook book, Roster competitors) throws WrittenRefused {
    Set<String> codes =
        book.divisions().stream()
            .map(Division::code)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    List<WrittenFault> faults = competitors.faultsAgainst(codes);
    if (!faults.isEmpty()) {
      throw new WrittenRefused(faults.get(0).file(), faults);
    }
  }

  /** Refuses a name that cannot stand in the settings. */
  static void requireName(String name, String what, String code) throws StationException {
    if (name.isBlank() || name.length() > LONGEST_NAME || !WrittenText.isPlain(name)) {
      throw StationException.misstep(
          code,
          NOTHING_MADE,
          "The " + what + " needs a name of 1 to " + LONGEST_NAME + " characters on one line.",
          "Give the " + what + " a name.");
    }
  }

  /** Refuses a place where something is already. */
  static void requireFree(Path target) throws StationException, IOException {
    if (!Files.exists(target) || (Files.isDirectory(target) && isEmpty(target))) {
      return;
    }
    throw StationException.misstep(
        "FOLDER-TAKEN",
        "No event was made in " + target + ".",
        "Something is there already, and an event is never made over it.",
        "Choose another folder, or open the event that is there.");
  }
}
