package lanewarden.kiosk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.audit.slip.Slips;
import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.station.CheckUp;
import lanewarden.station.EventFolder;
import lanewarden.station.NewEvent;
import lanewarden.station.SignedPapers;
import lanewarden.station.StationSettings;
import lanewarden.station.Surroundings;

/** The events that booths work on. */
final class BoothEvent {
  static final String ORGANIZER_PASSPHRASE = "a very long oak";

  /** Sorts behind the officials, whom the arrow keys reach first. */
  static final String JUDGE = "Xenia Falk";

  /** Sealing keys is slow on purpose, so one event is made and every booth works on a copy. */
  static final EventFolder PLAIN = madeOnce("rule-book.toml", "roster.csv");

  /** The same for an event whose rules ask for more than arrow speed. */
  static final EventFolder CLAUSES = madeOnce("clauses.toml", "clauses.csv");

  /** Real check-ups, by a clock that tells UTC. */
  static final CheckUp CHECK_UP =
      new CheckUp(
          new Surroundings(
              Clock.systemUTC(), System::nanoTime, new SecureRandom(), "Lanewarden test"),
          ZoneOffset.UTC);

  /** Real reports and slips, on whatever printers the machine has. */
  static final Makers MAKERS = with(Booth.REPORTS);

  private BoothEvent() {}

  /** The same with reports of the test's own. */
  static Makers with(ReportMaker reports) {
    return new Makers(
        reports,
        SlipMaker.of(new Slips(Clock.systemUTC(), SignedPapers::of)),
        Printing.onSystem(),
        CHECK_UP);
  }

  private static EventFolder madeOnce(String rules, String roster) {
    try {
      Path temp = Files.createTempDirectory("booth");
      temp.toFile().deleteOnExit();
      return event(temp.resolve("event"), rules, roster);
    } catch (Exception e) {
      throw new IllegalStateException("the event of the tests could not be made", e);
    }
  }

  static Path copied(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Files.copy(path, to.resolve(from.relativize(path).toString()));
      }
    }
    return to;
  }

  static EventFolder event(Path path) throws Exception {
    return event(path, "rule-book.toml", "roster.csv");
  }

  private static EventFolder event(Path path, String rules, String roster) throws Exception {
    return event(path, rules, roster, "Station 1");
  }

  /**
   * One whose instrument stands nobody says how far from the bow: the reading is at its largest.
   */
  static EventFolder unplaced(Path path) throws Exception {
    EventFolder made = event(path);
    Path settings = path.resolve("station.toml");
    Files.writeString(
        settings, Files.readString(settings).replace("[place]\ndistance = \"3 m\"\n", ""));
    return made;
  }

  /** Another station of the same event. */
  static EventFolder station(Path path, String name) throws Exception {
    return event(path, "rule-book.toml", "roster.csv", name);
  }

  private static EventFolder event(Path path, String rules, String roster, String station)
      throws Exception {
    EventFolder event =
        new NewEvent(
                source("rule-book.toml", "/lanewarden/kiosk/" + rules),
                source("roster.csv", "/lanewarden/kiosk/" + roster),
                source("gate-timer.toml", "/config/profiles/gate-timer.toml"),
                station,
                StationSettings.Kind.SIMULATOR,
                "",
                new NewEvent.Person("Organizer", ORGANIZER_PASSPHRASE.toCharArray()),
                List.of(
                    new NewEvent.Person(Booth.OFFICIAL, Booth.PASSPHRASE.toCharArray()),
                    new NewEvent.Person("Piet Arrowsmith", Booth.PASSPHRASE.toCharArray()),
                    NewEvent.Person.judge(JUDGE, Booth.PASSPHRASE.toCharArray())))
            .make(path, Clock.systemUTC(), System::nanoTime, new SecureRandom());
    Files.writeString(
        path.resolve("station.toml"), "[place]\ndistance = \"3 m\"\n", StandardOpenOption.APPEND);
    return event;
  }

  private static NewEvent.Source source(String name, String resource) throws IOException {
    try (var in =
        Objects.requireNonNull(BoothEvent.class.getResourceAsStream(resource), resource)) {
      return new NewEvent.Source(name, in.readAllBytes());
    }
  }

  /** Puts a rule book in force that has half of its first division drawn. */
  static void adoptShare(Booth booth) throws Exception {
    Path rules = booth.folder.path().resolve("rule-book.toml");
    Files.writeString(
        rules,
        Files.readString(rules)
            .replaceFirst("limit = ", "who = \"random share\"\nshare = \"50 %\"\nlimit = "));
    booth
        .station
        .proceedings()
        .adoptRuleBook(Optional.empty(), ORGANIZER_PASSPHRASE.toCharArray(), "a share");
  }

  /** Gives an event's settings a serial port in place of the simulator. */
  static void onPort(Path event, String port) throws IOException {
    Path settings = event.resolve("station.toml");
    Files.writeString(
        settings,
        Files.readString(settings)
            .replace("\"simulator\"\n", "\"serial\"\nport = \"" + port + "\"\n"));
  }

  /** Leaves an event without an instrument, so that nobody shoots but the test. */
  static void typed(Path event) throws IOException {
    Path settings = event.resolve("station.toml");
    Files.writeString(
        settings, Files.readString(settings).replace("\"simulator\"\n", "\"typed\"\n"));
  }
}
