package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoEventTest {
  @TempDir Path here;

  private CheckInLine begun(DemoEvent demo) throws Exception {
    // Archers take their time, so that the check is still going on
    CheckInLine line = CheckInLine.open(demo.folder(), Optional.empty(), 1, PracticeEvent.here());
    line.station().signIn(DemoEvent.OFFICIAL, DemoEvent.PASSPHRASE.toCharArray());
    line.station().call("101");
    return line;
  }

  @Test
  void isMadeOnceAndOpenedAfterwards() throws Exception {
    DemoEvent demo = DemoEvent.in(here.resolve("demo"), PracticeEvent.here());
    assertFalse(demo.isBegun(PracticeEvent.here()));
    begun(demo).close();
    DemoEvent again = DemoEvent.in(here.resolve("demo"), PracticeEvent.here());
    assertTrue(again.isBegun(PracticeEvent.here()));
  }

  @Test
  void canBeMadeAnew() throws Exception {
    begun(DemoEvent.in(here.resolve("demo"), PracticeEvent.here())).close();
    DemoEvent anew = DemoEvent.anew(here.resolve("demo"), PracticeEvent.here());
    assertFalse(anew.isBegun(PracticeEvent.here()));
  }

  @Test
  void isNotTakenAwayFromUnderAStation() throws Exception {
    try (CheckInLine line = begun(DemoEvent.in(here.resolve("demo"), PracticeEvent.here()))) {
      assertEquals(
          "LEDGER-IN-USE",
          codeOf(() -> DemoEvent.anew(here.resolve("demo"), PracticeEvent.here())));
      line.station().endCheck("still here");
    }
  }

  @Test
  void neverTouchesARealEvent() throws Exception {
    EventFolder real = PracticeEvent.make(here.resolve("real"));
    StationException e =
        assertThrows(
            StationException.class, () -> DemoEvent.anew(real.path(), PracticeEvent.here()));
    assertEquals(Trouble.Kind.USAGE, e.trouble().kind());
    assertTrue(real.isMade());
    assertThrows(StationException.class, () -> DemoEvent.in(real.path(), PracticeEvent.here()));
  }
}
