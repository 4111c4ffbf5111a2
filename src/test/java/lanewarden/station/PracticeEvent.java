package lanewarden.station;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;

/** A small event for tests, made once for a test class and copied for each test. */
public final class PracticeEvent {
  public static final String OFFICIAL = "Ada Holt";
  public static final String OTHER_OFFICIAL = "Bo Lind";
  public static final String JUDGE = "Cy Marsh";
  public static final String STATION = "Lane A";
  public static final String PASSPHRASE = "practice only";

  /** OC: mean of 3, at most 309 ft/s. HC: highest of 2, at most 282 ft/s. LB: one reading. */
  public static final String RULES =
      """
      format = 1
      [event]
      name = "Practice"
      edition = "1"
      [[division]]
      code = "OC"
      name = "Open compound"
      limit = "300 ft/s"
      tolerance = "3 %"
      decide = "mean"
      counted = 3
      shots = 5
      voids = 1
      rechecks = 1
      [[division]]
      code = "HC"
      name = "Hunter compound"
      limit = "280 ft/s"
      tolerance = "2 ft/s"
      decide = "highest"
      counted = 2
      shots = 4
      voids = 1
      rechecks = 1
      [[division]]
      code = "LB"
      name = "Longbow"
      limit = "58 m/s"
      tolerance = "none"
      decide = "first within"
      counted = 1
      shots = 1
      voids = 0
      rechecks = 0
      """;

  public static final String ROSTER =
      """
      bib,name,division
      1,Ann Archer,OC
      2,Ben Bowyer,HC
      3,Cat Fletcher,LB
      4,Ann Nocker,OC
      """;

  private PracticeEvent() {}

  /** Makes the event with the simulator as its instrument. */
  public static EventFolder make(Path path) throws Exception {
    return make(path, RULES, ROSTER);
  }

  /** The same with a rule book and a roster of the test's own. */
  public static EventFolder make(Path path, String rules, String roster) throws Exception {
    return draft(rules, roster).make(path, Clock.systemUTC(), System::nanoTime, new SecureRandom());
  }

  /** Makes the event with two officials, and a judge beside them. */
  public static EventFolder makeWithAJudge(Path path) throws Exception {
    return draft(
            RULES,
            ROSTER,
            STATION,
            List.of(
                person(OFFICIAL),
                person(OTHER_OFFICIAL),
                NewEvent.Person.judge(JUDGE, PASSPHRASE.toCharArray())))
        .make(path, Clock.systemUTC(), System::nanoTime, new SecureRandom());
  }

  /** The same for another station. */
  public static EventFolder makeStation(Path path, String station) throws Exception {
    return draft(RULES, ROSTER, station, List.of(person(OFFICIAL), person(OTHER_OFFICIAL)))
        .make(path, Clock.systemUTC(), System::nanoTime, new SecureRandom());
  }

  static NewEvent draft(String rules, String roster) throws IOException {
    return draft(rules, roster, STATION, List.of(person(OFFICIAL), person(OTHER_OFFICIAL)));
  }

  private static NewEvent draft(
      String rules, String roster, String station, List<NewEvent.Person> officials)
      throws IOException {
    return new NewEvent(
        new NewEvent.Source("rules.toml", rules.getBytes(UTF_8)),
        new NewEvent.Source("roster.csv", roster.getBytes(UTF_8)),
        new NewEvent.Source("gate-timer.toml", profile()),
        station,
        StationSettings.Kind.SIMULATOR,
        "",
        person("Olga Root"),
        officials);
  }

  static NewEvent.Person person(String name) {
    return new NewEvent.Person(name, PASSPHRASE.toCharArray());
  }

  static byte[] profile() throws IOException {
    return Files.readAllBytes(Path.of("config/profiles/gate-timer.toml"));
  }

  /** A copy of an event that nobody has open. */
  public static EventFolder copy(EventFolder event, Path target) throws IOException {
    try (Stream<Path> files = Files.walk(event.path())) {
      for (Path file : files.toList()) {
        Files.copy(file, target.resolve(event.path().relativize(file).toString()));
      }
    }
    return new EventFolder(target);
  }

  /** Where the report of an event as it is now is written if nobody says otherwise. */
  public static Path report(EventFolder event) throws StationException {
    return event.path().resolve(LedgerNames.of(event.ledger()).report(true, false));
  }

  public static Surroundings here() {
    return new Surroundings(
        Clock.systemUTC(), System::nanoTime, new SecureRandom(), "Lanewarden under test");
  }
}
