package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;
import org.junit.jupiter.api.Test;

/** Every point of a check-up, and the way each can fail. */
class CheckUpTest extends LineTest {
  private static final Surroundings NOW = PracticeEvent.here();

  private SelfCheck check(Surroundings with) throws Exception {
    return new CheckUp(with, ZoneOffset.UTC).of(line.folder, Optional.empty());
  }

  private Point point(Subject subject) throws Exception {
    return point(check(NOW), subject);
  }

  private static Point point(SelfCheck check, Subject subject) {
    return check.points().stream().filter(p -> p.subject() == subject).findAny().orElseThrow();
  }

  private void assertPoint(State state, String found, Point point) {
    assertEquals(state, point.state(), point.toString());
    assertTrue(point.found().contains(found), point.toString());
    assertEquals(state == State.GOOD, point.remedy().isBlank(), point.toString());
  }

  private Path file(String name) {
    return line.folder.path().resolve(name);
  }

  private static Surroundings at(Instant now) {
    return new Surroundings(
        Clock.fixed(now, ZoneOffset.UTC), NOW.nanos(), NOW.random(), NOW.program());
  }

  @Test
  void everySubjectIsLookedAtBesideAnOpenLineAndNothingIsSaidOfAnybody() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s");
    SelfCheck found = check(NOW);

    Set<Subject> told = found.points().stream().map(Point::subject).collect(Collectors.toSet());
    assertEquals(EnumSet.allOf(Subject.class), told);
    assertEquals(State.ATTENTION, found.worst(), found.toString());
    String all = found.points().stream().map(Point::found).collect(Collectors.joining("\n"));
    for (String personal :
        List.of("Ann", "Archer", "Ada", "Holt", "Lind", "301", "Lane A", here.toString())) {
      assertFalse(all.contains(personal), personal + " in " + all);
    }
  }

  @Test
  void ledgerIsToldWithItsHeadAndWhatItHolds() throws Exception {
    String head = line.station.view().head().shortForm();
    SelfCheck found = check(NOW);
    assertPoint(State.GOOD, "head " + head + ": every signature", point(found, Subject.LEDGER));
    assertEquals(head, found.ledger().orElseThrow().head());
    assertTrue(found.ledger().orElseThrow().kinds().contains("official-enrolled: 2"));
  }

  @Test
  void ledgerThatIsNoneIsWrongAndTheRestIsToldAllTheSame() throws Exception {
    line.close();
    Files.writeString(line.folder.ledger(), "no ledger at all");
    SelfCheck found = check(NOW);
    assertPoint(State.WRONG, "LEDGER-FOREIGN", point(found, Subject.LEDGER));
    assertEquals(Optional.empty(), found.ledger());
    assertPoint(State.GOOD, "It says", point(found, Subject.CLOCK));
  }

  @Test
  void ledgerWithoutItsGuardsIsWrong() throws Exception {
    line.close();
    try (var connection =
            java.sql.DriverManager.getConnection("jdbc:sqlite:" + line.folder.ledger());
        var statement = connection.createStatement()) {
      statement.execute("DROP TRIGGER entry_is_never_deleted");
    }
    assertPoint(State.WRONG, "1 fault", point(Subject.LEDGER));
  }

  @Test
  void clockBehindTheLastEntryIsWrong() throws Exception {
    assertPoint(State.GOOD, "compare it with a watch", point(Subject.CLOCK));
    Instant before = Instant.now().minus(Duration.ofHours(1));
    assertPoint(
        State.WRONG, "but the ledger has an entry of", point(check(at(before)), Subject.CLOCK));
  }

  @Test
  void clockThatForgotTheYearIsWrongAndOneFarBehindTheEventIsLookedAt() throws Exception {
    assertPoint(
        State.WRONG,
        "1970-01-01 01:00 here, 1970-01-01T00:00:00Z in UTC, which cannot be",
        ComputerPoints.clock(Instant.EPOCH, Optional.empty(), ZoneId.of("Africa/Lagos")));
    Instant later = Instant.now().plus(Duration.ofDays(400));
    assertPoint(
        State.ATTENTION, "the ledger's last entry is of", point(check(at(later)), Subject.CLOCK));
  }

  @Test
  void diskThatIsFullOrReadOnlyIsWrong() {
    assertPoint(State.GOOD, "40000 MB", ComputerPoints.disk(40_000_000_000L, true));
    assertPoint(State.ATTENTION, "900 MB", ComputerPoints.disk(900_000_000, true));
    assertPoint(State.WRONG, "90 MB", ComputerPoints.disk(90_000_000, true));
    assertPoint(State.WRONG, "Nothing can be written", ComputerPoints.disk(40_000_000_000L, false));
  }

  @Test
  void logIsLookedAt() throws Exception {
    assertPoint(State.ATTENTION, "not written", point(Subject.LOG));
    try (ProgramLog log = ProgramLog.open(new UserFolder(here.resolve("own")), here)) {
      assertPoint(State.GOOD, "written", point(check(NOW.with(log)), Subject.LOG));
    }
    Files.writeString(here.resolve("taken"), "a file in place of the folder");
    try (ProgramLog log = ProgramLog.open(new UserFolder(here.resolve("taken")), here)) {
      Point told = point(check(NOW.with(log)), Subject.LOG);
      assertPoint(State.ATTENTION, "not written", told);
      assertTrue(told.remedy().contains("taken"), told.remedy());
    }
  }

  @Test
  void organizersKeyShouldLieElsewhere() throws Exception {
    assertPoint(State.ATTENTION, "lies in the event's folder", point(Subject.ORGANIZER_KEY));
    Files.move(line.folder.keys().organizer(), here.resolve("organizer.key"));
    assertPoint(State.GOOD, "does not lie", point(Subject.ORGANIZER_KEY));
  }

  @Test
  void officialsWithoutAKeyCannotSign() throws Exception {
    assertPoint(State.GOOD, "2 can sign here.", point(Subject.OFFICIALS));
    Files.delete(line.folder.keys().of(PracticeEvent.OFFICIAL));
    assertPoint(State.GOOD, "1 can sign here, 1 have no key here", point(Subject.OFFICIALS));
    Files.delete(line.folder.keys().of(PracticeEvent.OTHER_OFFICIAL));
    assertPoint(State.WRONG, "0 can sign here", point(Subject.OFFICIALS));
  }

  @Test
  void suspendedOfficialCannotSign() throws Exception {
    KeyOffice office = line.station.keyOffice(new SecureRandom());
    office.suspend(
        office.organizer(Optional.empty(), PracticeEvent.PASSPHRASE.toCharArray()),
        PracticeEvent.OTHER_OFFICIAL,
        "went home");
    assertPoint(State.GOOD, "1 can sign here.", point(Subject.OFFICIALS));
  }

  @Test
  void judgeIsMissedBeforeThereIsAProtest() throws Exception {
    assertPoint(State.ATTENTION, "None is named", point(Subject.JUDGE));
    EventFolder judged = PracticeEvent.makeWithAJudge(here.resolve("judged"));
    SelfCheck found = new CheckUp(NOW, ZoneOffset.UTC).of(judged, Optional.empty());
    assertPoint(State.GOOD, "1 is named", point(found, Subject.JUDGE));
  }

  @Test
  void ruleBookInForceIsHeldAgainstTheFile() throws Exception {
    assertPoint(State.GOOD, "3 divisions", point(Subject.RULE_BOOK));
    Files.writeString(file("rule-book.toml"), "# changed\n", StandardOpenOption.APPEND);
    assertPoint(State.ATTENTION, "the file is another", point(Subject.RULE_BOOK));
    Files.writeString(file("rule-book.toml"), "limit = ", StandardOpenOption.APPEND);
    assertPoint(State.WRONG, "FILE-REFUSED", point(Subject.RULE_BOOK));
  }

  @Test
  void rosterIsHeldAgainstTheOneInForceAndTheRuleBook() throws Exception {
    assertPoint(State.GOOD, "4 competitors, every division known", point(Subject.ROSTER));
    Files.writeString(file("roster.csv"), "5,Dan Nock,OC\n", StandardOpenOption.APPEND);
    assertPoint(State.ATTENTION, "5 competitors", point(Subject.ROSTER));
    Files.writeString(file("roster.csv"), "6,Eve Quiver,XX\n", StandardOpenOption.APPEND);
    Point stranger = point(Subject.ROSTER);
    assertPoint(State.WRONG, "1 of them in a division", stranger);
    assertTrue(stranger.details().contains("roster.csv:7:"), stranger.details());
  }

  @Test
  void simulatorIsNoInstrumentAndFaultySettingsAreTold() throws Exception {
    assertPoint(State.ATTENTION, "simulator", point(Subject.INSTRUMENT));
    Files.writeString(file("station.toml"), "nonsense = 1\n", StandardOpenOption.APPEND);
    assertPoint(State.WRONG, "FILE-REFUSED", point(Subject.INSTRUMENT));
  }

  @Test
  void heldLineIsWrongUntilTheHoldIsLifted() throws Exception {
    assertPoint(State.GOOD, "None is planned.", point(Subject.VERIFICATION));
    line.station.proving().hold("a gate was knocked over");
    assertPoint(State.WRONG, "The line is held", point(Subject.VERIFICATION));
  }

  @Test
  void verificationThatIsDueIsTold() throws Exception {
    line.close();
    Files.writeString(
        file("station.toml"),
        "[verification]\nbefore_opening = true\nevery = 20\nmost_bias = \"1 ft/s\"\n"
            + "most_spread = \"1 ft/s\"\nreference = \"check bow\"\nspeed = \"296.4 ft/s\"\n",
        StandardOpenOption.APPEND);
    assertPoint(
        State.GOOD,
        "before the first competitor, every 20 competitors, 3 shots",
        point(Subject.VERIFICATION));
    line = PracticeLine.open(line.folder).onDuty();
    assertPoint(State.ATTENTION, "is due before the next competitor", point(Subject.VERIFICATION));
  }

  @Test
  void folderThatIsNotThereIsRefused() {
    StationException refused =
        assertThrows(
            StationException.class,
            () ->
                new CheckUp(NOW, ZoneOffset.UTC)
                    .of(new EventFolder(here.resolve("none")), Optional.empty()));
    assertEquals("NOT-A-FOLDER", refused.trouble().code());
  }
}
