package lanewarden.kiosk.setups;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.bench.PracticeShot;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Speed;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import lanewarden.station.PracticeSetUpText;
import lanewarden.station.Station;
import lanewarden.station.Trouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Set-ups that are shot beside each other, without a screen; the bows are invented. */
class SetUpsViewModelTest {
  private static final String DEMO = Path.of("demo-data/practice.csv").toAbsolutePath().toString();

  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private final Queue<Runnable> screen = new ConcurrentLinkedQueue<>();
  private final List<Trouble> refusals = new ArrayList<>();
  private EventFolder folder;
  private SimulatedInstrument instrument;
  private Station station;
  private SetUpsViewModel model;
  private int taken;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void open() throws Exception {
    folder = PracticeEvent.copy(made, here.resolve("event"));
    instrument = new SimulatedInstrument(folder.profile(), Clock.systemUTC());
    station = Station.open(folder, instrument, "test", Clock.systemUTC(), System::nanoTime);
    Desk desk = new Desk(CompletableFuture.completedFuture(station), Runnable::run, screen::add);
    model =
        new SetUpsViewModel(
            desk,
            new ComparisonPaper(Clock.systemUTC()),
            new Places(folder),
            new SideTable(Runnable::run, screen::add),
            Texts.in(Language.ENGLISH));
    desk.listen(model::take);
    model.open();
    settle();
  }

  @AfterEach
  void close() throws Exception {
    station.close();
  }

  private void settle() throws Exception {
    instrument.settle();
    for (Runnable task = screen.poll(); task != null; task = screen.poll()) {
      task.run();
    }
  }

  private void took() {
    taken++;
  }

  private void state(String bow, String arrow, String mass) throws Exception {
    model.state(new PracticeSetUpText(bow, arrow, mass, "", "", "", ""), this::took, refusals::add);
    settle();
  }

  private void type(String... readings) throws Exception {
    for (String reading : readings) {
      model.type(reading, this::took, refusals::add);
      settle();
    }
  }

  private void begin(String file) throws Exception {
    model.begin(file, this::took, refusals::add);
    settle();
  }

  private List<String> names() {
    return model.rows().stream().map(row -> row.line().setUp()).toList();
  }

  @Test
  void rowsStandFromTheFastestToTheSlowestAndTheOneLookedAtStays() throws Exception {
    state("Heron", "long", "377.5");
    type("290", "291");
    state("Heron", "short", "350");
    type("300", "301");
    assertEquals(List.of("Heron + short", "Heron + long"), names());
    assertEquals("Heron + long", model.chosen().get().orElseThrow().line().setUp());

    model.choose(-1);
    assertEquals("Heron + short", model.chosen().get().orElseThrow().line().setUp());
    model.choose(-1);
    assertEquals("Heron + short", model.chosen().get().orElseThrow().line().setUp());
    model.choose(1);
    model.again();
    type("310", "311", "309");
    assertEquals(List.of("Heron + long", "Heron + short"), names());
    assertEquals("Heron + long", model.chosen().get().orElseThrow().line().setUp());
  }

  /** Common practice: the 390 of 298, 390, 301 and 301 ft/s is a misread. */
  @Test
  void misreadIsMarkedInItsRowAndAPersonsWordStandsAboveIt() throws Exception {
    state("Heron", "short", "350");
    model.turnListening();
    settle();
    for (String speed : List.of("298.0 ft/s", "390.0 ft/s", "301.0 ft/s", "301.0 ft/s")) {
      instrument.shoot(Speed.parse(speed));
    }
    settle();
    SetUpRow row = model.rows().get(0);
    assertEquals("300.0", row.line().mean());
    assertEquals(List.of(row.shots().get(1)), row.leftOut());

    model.mark(row.shots().get(1), PracticeShot.Word.GOOD, this::took, refusals::add);
    settle();
    assertEquals(List.of(), model.rows().get(0).leftOut());
    assertEquals(List.of(), refusals);
  }

  @Test
  void instrumentIsTheLinesAgainOnceNobodyLooks() throws Exception {
    state("Heron", "short", "350");
    model.turnListening();
    settle();
    assertTrue(model.isListening());
    model.close();
    settle();
    assertFalse(model.isListening());
    model.close();
    assertTrue(screen.isEmpty(), "nothing is asked where nothing listens");
  }

  @Test
  void refusalGoesToWhoeverAskedAndNothingChanges() throws Exception {
    type("298");
    assertEquals("PRACTICE-NO-SET-UP", refusals.get(0).code());
    begin("not there.csv");
    assertEquals(2, refusals.size());
    assertEquals(0, taken);
    assertEquals(Optional.empty(), model.sheet().get());
    model.turnListening();
    settle();
    assertEquals("PRACTICE-NO-SET-UP", model.trouble().get().orElseThrow().code());
    state("Heron", "short", "350");
    assertEquals(Optional.empty(), model.trouble().get());
  }

  @Test
  void fileIsGoneOnWithAndAnEmptyPracticeBeginsWhereNoneIsNamed() throws Exception {
    begin(DEMO);
    assertEquals(8, model.rows().size());
    assertTrue(model.done().get().endsWith("practice.csv"), model.done().get());
    begin("");
    assertEquals(List.of(), names());
    assertEquals(Optional.empty(), model.sheet().get());
    assertEquals(Optional.empty(), model.chosen().get());
  }

  @Test
  void everyCopyIsWrittenUnderTheNameOfThePractice() throws Exception {
    model.write(Copy.SHOTS, "", this::took, refusals::add);
    settle();
    assertEquals("PRACTICE-EMPTY", refusals.remove(0).code());
    begin(DEMO);
    for (Copy copy : Copy.values()) {
      model.write(copy, "", this::took, refusals::add);
      settle();
    }
    assertEquals(List.of(), refusals);
    assertTrue(Files.size(folder.path().resolve("practice.pdf")) > 10_000);
    assertEquals(9, Files.readAllLines(folder.path().resolve("practice-set-ups.csv")).size());
    assertEquals(50, Files.readAllLines(folder.path().resolve("practice-shots.csv")).size());

    model.write(Copy.TABLE, "nowhere/table.csv", this::took, refusals::add);
    settle();
    assertEquals("FILE-MISSING", refusals.get(0).code());
  }

  @Test
  void practiceIsSignedByWhoeverIsOnDutyOrByWhoComesForIt() throws Exception {
    begin(DEMO);
    assertEquals(List.of(PracticeEvent.OFFICIAL, PracticeEvent.OTHER_OFFICIAL), model.officials());
    model.keep(
        PracticeEvent.OFFICIAL,
        PracticeEvent.PASSPHRASE.toCharArray(),
        "Club evening",
        this::took,
        refusals::add);
    settle();
    assertEquals(
        "Signed into the ledger as entry " + (station.view().head().sequence() - 1),
        model.done().get());
    assertFalse(model.onDuty().get());

    station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
    settle();
    assertTrue(model.onDuty().get());
    model.keep("Once more", this::took, refusals::add);
    settle();
    assertEquals(
        "Signed into the ledger as entry " + station.view().head().sequence(), model.done().get());
    assertEquals(List.of(), refusals);
  }
}
