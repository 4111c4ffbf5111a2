package lanewarden.station;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line without an instrument on it: every reading is typed in. */
class TypedLineTest {
  private static final StationSettings TYPED =
      new StationSettings("Lane A", "gate-timer.toml", StationSettings.Kind.TYPED, "");

  @TempDir Path here;

  @Test
  void readingsAreTypedAndMarkedSoAndNobodyWaitsForAnInstrument() throws Exception {
    EventFolder event = PracticeEvent.make(here.resolve("event"));
    Files.writeString(event.path().resolve(EventFolder.SETTINGS), TYPED.toToml());
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 1, PracticeEvent.here())) {
      Station station = line.station();
      assertFalse(station.view().training());
      station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
      station.call("3");
      station.type("57.1");
      LineView view = station.view();
      Check check = view.check().orElseThrow().check();
      assertEquals("typed", check.shots().get(0).reading().source());
      assertTrue(view.check().orElseThrow().outcome().isPresent());
      assertEquals(LineView.Link.CLOSED, view.link());
    }
  }

  @Test
  void theSimulatorIsTrainingAndSaysSo() throws Exception {
    EventFolder event = PracticeEvent.make(here.resolve("event"));
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 0, PracticeEvent.here())) {
      assertTrue(line.station().view().training());
    }
  }

  @Test
  void nothingTypedConfirmsAnArrow() {
    String second =
        TYPED.toToml()
            + "[second]\nprofile = \"plain-decimal.toml\"\ninstrument = \"typed\"\n"
            + "agree = \"1 %\"\nwithin_ms = 1000\n";
    WrittenRefused refused =
        assertThrows(
            WrittenRefused.class, () -> StationSettings.read("s.toml", second.getBytes(UTF_8)));
    assertTrue(String.valueOf(refused.getMessage()).contains("take the section out"));
  }
}
