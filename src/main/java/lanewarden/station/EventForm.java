package lanewarden.station;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person has filled in of an event to be made; {@link #examine} says what is wrong with it,
 * field by field, and {@link #make} makes the event.
 *
 * @param folder where it is to be
 * @param station the station's name
 * @param ruleBook the file to copy; blank for the example that the program carries
 * @param roster the list of competitors to take over
 * @param columns which of the list's columns are which of the roster's, from 0 by the roster's
 *     title; empty as long as nobody chose
 * @param profile the file to copy, or the name of one that the program carries
 * @param kind where readings come from
 * @param port of a serial instrument
 * @param people the organizer, then those who may sign; a nameless one is nobody
 */
public record EventForm(
    String folder,
    String station,
    String ruleBook,
    String roster,
    Map<String, Integer> columns,
    String profile,
    StationSettings.Kind kind,
    String port,
    List<Person> people) {
  /** The field of {@link #folder}. */
  public static final String FOLDER = "folder";

  /** The field of {@link #station}. */
  public static final String STATION = "station";

  /** The field of {@link #ruleBook}. */
  public static final String RULE_BOOK = "rule-book";

  /** The field of {@link #roster}. */
  public static final String ROSTER = "roster";

  /** Begins the fields of {@link #columns}, each with its title behind. */
  public static final String COLUMN = "column-";

  /** The field of {@link #profile}. */
  public static final String PROFILE = "profile";

  /** The field of {@link #port}. */
  public static final String PORT = "port";

  /** Copies the lists. */
  public EventForm {
    columns = Map.copyOf(columns);
    people = List.copyOf(people);
  }

  /**
   * Somebody who gets a key.
   *
   * @param name as it stands in every signature
   * @param passphrase seals the key
   * @param again the same, typed once more
   * @param judge whether this is a judge; of the organizer it means nothing
   */
  public record Person(String name, String passphrase, String again, boolean judge) {

    /** Nobody yet. */
    public static final Person NOBODY = new Person("", "", "", false);

    boolean isNobody() {
      return name.isBlank() && passphrase.isEmpty() && again.isEmpty();
    }

    NewEvent.Person signing() {
      char[] secret = passphrase.toCharArray();
      return judge ? NewEvent.Person.judge(name, secret) : new NewEvent.Person(name, secret);
    }
  }

  /** Begins the fields of {@link #people}. */
  public static final String PERSON = "person-";

  /** The field of somebody's name. */
  public static String nameField(int person) {
    return PERSON + person + "-name";
  }

  /** The field of somebody's passphrase. */
  public static String passphraseField(int person) {
    return PERSON + person + "-passphrase";
  }

  /** The field of somebody's passphrase, typed again. */
  public static String againField(int person) {
    return PERSON + person + "-again";
  }

  /** Says what is right and wrong with it. Reads files; makes nothing. */
  public EventFormFindings examine() {
    return EventFormFindings.of(this);
  }

  /**
   * An event that was made.
   *
   * @param folder where it is
   * @param thumbprint of the organizer's key, to be published
   */
  public record Made(EventFolder folder, String thumbprint) {}

  /**
   * Makes the event.
   *
   * @throws StationException if anything is wrong with the form, or the disk refuses; then nothing
   *     was made
   */
  public Made make(Surroundings here) throws StationException {
    EventFormFindings found = examine();
    Optional<EventFormFindings.Fault> fault =
        found.faults().values().stream().flatMap(List::stream).findFirst();
    if (fault.isPresent()) {
      throw StationException.misstep(
          "FORM-FAULTY",
          NewEvent.NOTHING_MADE,
          fault.get().words().toString(),
          "Mend every field that is marked.");
    }
    NewEvent event =
        new NewEvent(
            ruleBookSource(),
            new NewEvent.Source(
                EventFolder.ROSTER,
                found.mapped().orElseThrow().csv().getBytes(StandardCharsets.UTF_8)),
            profileSource(),
            station.strip(),
            kind,
            kind == StationSettings.Kind.SERIAL ? port.strip() : "",
            people.get(0).signing(),
            people.stream().skip(1).filter(p -> !p.isNobody()).map(Person::signing).toList());
    EventFolder made = event.make(path(folder), here.clock(), here.nanos(), here.random());
    return new Made(made, LedgerInspection.of(made.path(), List.of()).organizer().orElseThrow());
  }

  NewEvent.Source ruleBookSource() throws StationException {
    return ruleBook.isBlank() ? Packed.ruleBook() : source(ruleBook);
  }

  NewEvent.Source profileSource() throws StationException {
    boolean packed = Packed.profiles().stream().anyMatch(p -> p.file().equals(profile));
    return packed ? Packed.profileFile(profile) : source(profile);
  }

  static NewEvent.Source source(String file) throws StationException {
    Path path = path(file);
    if (Files.isDirectory(path)) {
      throw StationException.misstep(
          "NOT-A-FILE", NewEvent.NOTHING_MADE, path + " is a folder.", "Choose a file in it.");
    }
    return NewEvent.Source.of(path);
  }

  /** The place that was written, which must say all of it: nobody sees where the program stands. */
  static Path path(String written) throws StationException {
    if (written.isBlank()) {
      throw StationException.misstep(
          "PLACE-NEEDED",
          NewEvent.NOTHING_MADE,
          "Nothing stands here yet.",
          "Choose it, or write it.");
    }
    try {
      Path path = Path.of(written.strip());
      if (path.isAbsolute()) {
        return path;
      }
    } catch (InvalidPathException e) {
      throw StationException.misstep(
          "PLACE-NEEDED", NewEvent.NOTHING_MADE, String.valueOf(e.getMessage()), "Choose a place.");
    }
    throw StationException.misstep(
        "PLACE-NEEDED",
        NewEvent.NOTHING_MADE,
        "\"" + written + "\" does not say the whole way to it.",
        "Choose it, or write the way from the beginning.");
  }
}
