package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

class RestartTest extends LineTest {

  @Test
  void comesBackInTheMiddleOfACheck() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s", "399 ft/s");
    line.station.officiating().declareLastVoid("a bird");
    Check before = line.check();
    restart();
    assertEquals(before, line.check());
    line.onDuty();
    line.shoot("302 ft/s", "303 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(1, line.facts(Fact.CheckOpened.class).size());
  }

  @Test
  void comesBackToADecidedCheckThatIsStillAtTheLine() throws Exception {
    line.station.call("2");
    line.shoot("283 ft/s");
    restart();
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    line.onDuty();
    line.station.call("2");
    assertEquals(2, line.check().opened().attempt());
  }

  @Test
  void nobodyIsOnDutyAfterwards() throws Exception {
    restart();
    assertEquals(Optional.empty(), line.station.view().official());
  }

  @Test
  void aSecondStationOnTheSameFolderIsRefused() {
    StationException e = assertThrows(StationException.class, () -> PracticeLine.open(line.folder));
    assertEquals("LEDGER-IN-USE", e.trouble().code());
    assertEquals(Trouble.Kind.ENVIRONMENT, e.trouble().kind());
  }

  @Test
  void aSecondStationIsWelcomeOnceTheFirstIsClosed() throws Exception {
    line.close();
    line = PracticeLine.open(line.folder).onDuty();
    line.station.call("1");
    assertEquals("1", line.check().opened().bib());
  }
}
