package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.journal.Check;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An official who leaves the table without a word is signed out; the check stays. */
class IdleTest {
  @TempDir Path here;
  private final SetClock clock = new SetClock();
  private SimulatedInstrument simulator;
  private Station station;

  @BeforeEach
  void open() throws Exception {
    EventFolder event = PracticeEvent.make(here.resolve("event"));
    Path settings = event.path().resolve(EventFolder.SETTINGS);
    Files.writeString(settings, Files.readString(settings) + "sign_out_after = \"10 min\"\n");
    simulator = new SimulatedInstrument(event.profile(), Clock.systemUTC());
    station = Station.open(event, simulator, "Lanewarden under test", clock, clock::nanos);
    signIn();
  }

  @AfterEach
  void close() throws Exception {
    station.close();
  }

  private void signIn() throws Exception {
    station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
  }

  private void pass(int minutes) {
    clock.pass(Duration.ofMinutes(minutes));
    station.lookForTheOfficial();
  }

  private void shoot(String speed) throws Exception {
    simulator.shoot(Speed.parse(speed));
    simulator.settle();
  }

  private Optional<String> official() {
    return station.view().official();
  }

  @Test
  void whoDoesNothingForTenMinutesIsSignedOutWithTheReason() throws Exception {
    pass(9);
    assertEquals(Optional.of(PracticeEvent.OFFICIAL), official());
    pass(1);
    assertEquals(Optional.empty(), official());
    Trouble told = station.view().trouble().orElseThrow();
    assertEquals("SIGNED-OUT", told.code());
    assertTrue(told.why().contains("nothing was done for 10 min"), told.why());
    assertEquals("NOBODY-ON-DUTY", codeOf(() -> station.call("1")));
  }

  @Test
  void eachActStartsTheTimeAnew() throws Exception {
    for (int i = 0; i < 3; i++) {
      pass(9);
      station.call("1");
      station.endCheck("only looked at");
    }
    assertEquals(Optional.of(PracticeEvent.OFFICIAL), official());
  }

  @Test
  void inTheMiddleOfACheckArrowsAreAnActAndWithoutAnyTheCheckStaysAtTheLine() throws Exception {
    station.call("1");
    for (int i = 0; i < 2; i++) {
      pass(9);
      shoot("301 ft/s");
    }
    pass(9);
    assertEquals(Optional.of(PracticeEvent.OFFICIAL), official());
    pass(1);
    assertEquals(Optional.empty(), official());
    Check check = station.view().check().orElseThrow().check();
    assertEquals(2, check.shots().size());
    signIn();
    shoot("302 ft/s");
    assertTrue(station.view().check().orElseThrow().outcome().isPresent());
  }

  @Test
  void whoShowsToBeThereStaysAndTheTimeLeftIsTold() throws Exception {
    pass(9);
    station.stir();
    assertEquals(Optional.of(Duration.ofMinutes(10)), station.view().signOutIn());
    pass(9);
    assertEquals(Optional.of(Duration.ofMinutes(1)), station.view().signOutIn());
    pass(1);
    assertEquals(Optional.empty(), official());
    assertEquals(Optional.empty(), station.view().signOutIn());
    station.stir();
    assertEquals(Optional.empty(), official(), "nobody comes back by a key alone");
  }

  /** As when the lid was closed, so that nobody looked in between. */
  @Test
  void theFirstActAfterAnHourIsRefusedEvenIfNobodyLooked() throws Exception {
    clock.pass(Duration.ofHours(1));
    assertEquals("NOBODY-ON-DUTY", codeOf(() -> station.call("1")));
    assertEquals(Optional.empty(), official());
  }
}
