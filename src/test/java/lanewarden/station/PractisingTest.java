package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lanewarden.bench.Comparison;
import lanewarden.bench.PairDifference;
import lanewarden.bench.Practice;
import lanewarden.bench.PracticeSetUp;
import lanewarden.bench.PracticeShot;
import lanewarden.bench.Showing;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Set-ups that are shot beside each other at the station; bows and figures are invented. */
class PractisingTest {
  private static final Path DEMO = Path.of("demo-data/practice.csv");

  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private PracticeLine line;
  private Practising practising;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void open() throws Exception {
    line = PracticeLine.open(PracticeEvent.copy(made, here.resolve("event")));
    practising = line.station.practising();
  }

  @AfterEach
  void close() throws Exception {
    line.close();
  }

  private static PracticeSetUpText setUp(String bow, String arrow, String mass) {
    return new PracticeSetUpText(bow, arrow, mass, "", "", "", "");
  }

  private PracticeView view() {
    return line.station.view().practice();
  }

  private List<String> shots() {
    return view().practice().orElseThrow().series().stream()
        .flatMap(series -> series.shots().stream())
        .map(shot -> shot.speed().toString())
        .toList();
  }

  /** Common practice: the 390 of 298, 390, 301 and 301 ft/s is a misread. */
  @Test
  void readingsOfTheInstrumentAreTakenOutsideAnyCheckAndAMisreadDoesNotMoveTheMean()
      throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    practising.listen();
    line.shoot("298.0 ft/s", "390.0 ft/s", "301.0 ft/s", "301.0 ft/s");

    assertEquals(List.of("298.0 ft/s", "390.0 ft/s", "301.0 ft/s", "301.0 ft/s"), shots());
    Showing showing = practising.comparison().orElseThrow().showings().get(0);
    assertEquals(300, showing.mean().getAsDouble() / 0.3048, 1e-9);
    assertEquals("390.0 ft/s", showing.leftOut().get(0).shot().speed().toString());
    assertEquals(List.of(), line.facts(Fact.ReadingTaken.class));
    assertEquals(List.of(), line.facts(Fact.LineRefused.class));
  }

  @Test
  void lineThatTheInstrumentGarbledIsToldAndIsNoShot() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    practising.listen();
    line.emit("$PLWT,00354,0268.8,F,007440,A*00\\r\\n");

    assertFalse(view().news().orElseThrow().taken());
    assertTrue(view().practice().isEmpty());
    line.shoot("298.0 ft/s");
    assertEquals(new PracticeView.News(true, "298.0 ft/s"), view().news().orElseThrow());
  }

  @Test
  void readingIsTypedInTheUnitOfTheFirstShot() throws Exception {
    assertEquals("PRACTICE-NO-SET-UP", codeOf(() -> practising.type("298")));
    practising.shoot(setUp("Red", "short", "22.7 g"));
    practising.type("91.2 m/s");
    practising.type("91.4");
    assertEquals(List.of("91.2 m/s", "91.4 m/s"), shots());
    assertEquals("PRACTICE-READING", codeOf(() -> practising.type("fast")));
    assertEquals(2, shots().size());
  }

  @Test
  void everyShotIsInItsFileAtOnceAndAnEarlierPracticeStays() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    practising.type("298");
    Path first = view().file().orElseThrow();
    assertEquals(line.folder.path().resolve("practice-1.csv"), first);
    assertEquals(view().practice().orElseThrow().text(), Files.readString(first));

    practising.beginAnew();
    assertEquals(Optional.empty(), practising.comparison());
    practising.shoot(setUp("Grey", "short", "350"));
    practising.type("290");
    assertEquals("practice-2.csv", view().file().orElseThrow().getFileName().toString());
    assertTrue(Files.readString(first).contains("298 ft/s"));
  }

  @Test
  void shotThatTheDiskRefusesStaysOnTheScreenAndIsWrittenWithTheNext() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    Path inTheWay = line.folder.path().resolve("practice-1.csv.writing");
    Files.createDirectories(inTheWay.resolve("full"));
    practising.type("298");
    assertEquals(List.of("298 ft/s"), shots());
    assertTrue(view().trouble().isPresent());

    Files.delete(inTheWay.resolve("full"));
    practising.type("299");
    assertEquals(Optional.empty(), view().trouble());
    assertTrue(Files.readString(view().file().orElseThrow()).contains("298 ft/s"));
  }

  /** Which of the four bows differ is held against commons-math3 in ComparisonTest. */
  @Test
  void fileIsGoneOnWithAgainstTheRuleBookInForceAndStaysAsItIs() throws Exception {
    byte[] before = Files.readAllBytes(DEMO);
    practising.open(DEMO);
    Comparison comparison = practising.comparison().orElseThrow();
    assertEquals(8, comparison.showings().size());
    assertEquals(8 * 3, comparison.margins().size());
    assertEquals(
        PairDifference.Sense.NOISE,
        comparison.pairs().stream()
            .filter(pair -> pair.one().series().name().equals("Club bow + short shaft"))
            .filter(pair -> pair.other().series().name().equals("Green riser + short shaft"))
            .findFirst()
            .orElseThrow()
            .sense());

    assertEquals("350 gr", view().setUp().orElseThrow().mass().orElseThrow().toString());
    practising.shootAgain("Green riser", "short shaft");
    practising.type("298");
    assertEquals(List.of("practice-1.csv"), List.of(nameOf(view().file().orElseThrow())));
    assertTrue(Arrays.equals(before, Files.readAllBytes(DEMO)));
  }

  private static String nameOf(Path file) {
    return file.getFileName().toString();
  }

  @Test
  void faultyFileIsRefusedAndThePracticeIsAsBefore() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    practising.type("298");
    Path faulty = here.resolve("faulty.csv");
    Files.writeString(faulty, "bow,arrow,arrow-mass,speed\nRed,short,350 gr,fast\n");
    StationException refused = assertThrows(StationException.class, () -> practising.open(faulty));
    assertTrue(refused.trouble().why().contains("a speed such as"), refused.trouble().why());
    assertEquals(List.of("298 ft/s"), shots());
  }

  @Test
  void setUpThatContradictsOneBeforeIsRefusedAndTheOneBeforeIsShotOn() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    practising.type("298");
    assertEquals("PRACTICE-SET-UP", codeOf(() -> practising.shoot(setUp("Red", "short", "351"))));
    assertEquals("PRACTICE-SET-UP", codeOf(() -> practising.shoot(setUp("Red", "long", ""))));
    assertEquals("PRACTICE-SET-UP", codeOf(() -> practising.shoot(setUp("Red", "long", "22.7"))));
    assertEquals("PRACTICE-SET-UP", codeOf(() -> practising.shoot(setUp("Red", "short", "3 ft"))));
    assertEquals("PRACTICE-SET-UP", codeOf(() -> practising.shootAgain("Red", "never shot")));
    assertEquals("Red + short", view().setUp().map(PracticeSetUp::name).orElseThrow());
  }

  @Test
  void ratingIsTypedWithItsConditions() throws Exception {
    practising.shoot(
        new PracticeSetUpText("Red", "short", "350", "60", "29", "6.5", "330, 70, 30, 350"));
    assertEquals(91.44, view().setUp().orElseThrow().expected().orElseThrow().usual(), 1e-9);
    assertEquals(
        "PRACTICE-SET-UP",
        codeOf(
            () ->
                practising.shoot(
                    new PracticeSetUpText("Grey", "short", "", "60", "29", "", "330, 70"))));
  }

  @Test
  void practiceAndLineNeverListenAtOnce() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    line.onDuty();
    line.station.call("2");
    assertEquals("LINE-BUSY", codeOf(() -> practising.listen()));
    line.station.endCheck("he has left");
    practising.listen();
    assertEquals("PRACTICE-LISTENS", codeOf(() -> line.station.call("2")));
    assertEquals("PRACTICE-LISTENS", codeOf(() -> line.station.proving().begin()));
    practising.rest();
    line.station.call("2");
    line.shoot("270.0 ft/s");
    assertEquals(1, line.check().shots().size());
    assertTrue(view().practice().isEmpty());
  }

  @Test
  void markedShotIsLeftOutAndCountsAgain() throws Exception {
    practising.shoot(setUp("Red", "short", "350"));
    for (String shot : List.of("298", "299", "300")) {
      practising.type(shot);
    }
    practising.mark(3, PracticeShot.Word.MISREAD);
    assertEquals(1, practising.comparison().orElseThrow().leftOut());
    practising.mark(3, PracticeShot.Word.NONE);
    assertEquals(0, practising.comparison().orElseThrow().leftOut());
  }

  @Test
  void practiceIsSavedToAFileThatIsNotThereYet() throws Exception {
    Path to = here.resolve("saved.csv");
    assertEquals("PRACTICE-EMPTY", codeOf(() -> practising.save(to)));
    practising.open(DEMO);
    practising.save(to);
    assertEquals(Files.readString(DEMO), Files.readString(to));
    assertThrows(StationException.class, () -> practising.save(to));
  }

  @Test
  void practiceIsKeptInTheLedgerByWhoeverIsOnDuty() throws Exception {
    practising.open(DEMO);
    assertEquals("NOBODY-ON-DUTY", codeOf(() -> practising.keep("Club evening")));
    line.onDuty();
    assertEquals("PRACTICE-TITLE", codeOf(() -> practising.keep(" ")));
    long entry = practising.keep("Club evening");
    assertKept(entry, 1);
  }

  @Test
  void practiceIsKeptByAnOfficialWhoComesForItWhetherSomebodyIsOnDutyOrNot() throws Exception {
    practising.open(DEMO);
    assertKept(keepAsVisitor(), 1);
    assertFalse(line.station.view().official().isPresent());
    line.onDuty();
    assertKept(keepAsVisitor(), 2);
    assertEquals(Optional.of(PracticeEvent.OFFICIAL), line.station.view().official());
  }

  private long keepAsVisitor() throws StationException {
    return practising.keep(
        PracticeEvent.OTHER_OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray(), "Club evening");
  }

  private void assertKept(long entry, int kept) throws Exception {
    assertEquals(kept, line.facts(FrameFact.PracticeKept.class).size());
    FrameFact.PracticeKept fact = (FrameFact.PracticeKept) line.factOf(entry);
    assertEquals("Club evening", fact.title());
    assertEquals(Files.readString(DEMO), fact.text());
    assertEquals(Practice.read("p", Files.readAllBytes(DEMO)).sha256(), fact.sha256());
  }

  @Test
  void inARehearsalASetUpIsShotSixTimesAndAnArrowMoreForAMisread() throws Exception {
    line.close();
    try (CheckInLine rehearsal =
        CheckInLine.open(line.folder, Optional.empty(), 0, PracticeEvent.here())) {
      Station station = rehearsal.station();
      practising = station.practising();
      practising.shoot(
          new PracticeSetUpText("Red", "short", "350", "60", "29", "6.5", "330, 70, 30, 350"));
      practising.listen();
      rehearsal.awaitArrows(Duration.ZERO);
      assertEquals(6, count(station));
      double mean = practising.comparison().orElseThrow().showings().get(0).mean().getAsDouble();
      assertEquals(300, mean / 0.3048, 300 * 0.04);

      practising.mark(3, PracticeShot.Word.MISREAD);
      rehearsal.awaitArrows(Duration.ZERO);
      assertEquals(7, count(station));
      practising.shoot(setUp("Red", "long", "400"));
      rehearsal.awaitArrows(Duration.ZERO);
      assertEquals(13, count(station));
      practising.rest();
    }
    line = PracticeLine.open(line.folder);
  }

  private static int count(Station station) {
    return station.view().practice().practice().orElseThrow().series().stream()
        .mapToInt(series -> series.shots().size())
        .sum();
  }

  @Test
  void practiceDoesNotListenWhileTheInstrumentIsVerified() throws Exception {
    line.close();
    Files.writeString(
        line.folder.path().resolve("station.toml"),
        "[verification]\nmost_bias = \"1 ft/s\"\nmost_spread = \"1 ft/s\"\nshots = 3\n"
            + "reference = \"check bow\"\nspeed = \"296.4 ft/s\"\n",
        StandardOpenOption.APPEND);
    line = PracticeLine.open(line.folder).onDuty();
    line.station.practising().shoot(setUp("Red", "short", "350"));
    line.station.proving().begin();
    assertEquals("LINE-BUSY", codeOf(() -> line.station.practising().listen()));
  }
}
