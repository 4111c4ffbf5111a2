package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The port in the settings of an event, changed with everything else kept. */
class InstrumentPortTest {
  private static final String BEFORE =
      """
      format = 1
      station = "North gate" # as painted on the hut
      profile = "plain-decimal.toml"
      instrument = "serial"
      port = "/dev/ttyUSB0"   # the left socket

      [second]
      profile = "plain-decimal.toml"
      instrument = "serial"
      port = "COM7"
      agree = "1 %"
      within_ms = 500
      """;

  @TempDir Path here;

  private EventFolder folder(String settings) throws Exception {
    Files.writeString(here.resolve("station.toml"), settings);
    return new EventFolder(here);
  }

  private String settings() throws Exception {
    return Files.readString(here.resolve("station.toml"));
  }

  private static Trouble refused(InstrumentPort port, String other) {
    return assertThrows(StationException.class, () -> port.change(other)).trouble();
  }

  @Test
  void onlyThePortOfTheInstrumentIsChanged() throws Exception {
    InstrumentPort port = InstrumentPort.of(folder(BEFORE));
    assertEquals("/dev/ttyUSB0", port.now());
    port.change("COM12");
    assertEquals("COM12", InstrumentPort.of(port.event()).now());
    assertEquals(BEFORE.replace("\"/dev/ttyUSB0\"  ", "\"COM12\"         "), settings());
    try (Stream<Path> left = Files.list(here)) {
      assertEquals(1, left.count(), "no draft of the settings is left");
    }
  }

  @Test
  void aPortThatTheSettingsCannotHaveLeavesThemAsTheyWere() throws Exception {
    InstrumentPort port = InstrumentPort.of(folder(BEFORE));
    for (String other : List.of("COM7", "")) {
      Trouble trouble = assertThrows(StationException.class, () -> port.change(other)).trouble();
      assertEquals("FILE-REFUSED", trouble.code());
      assertTrue(trouble.why().contains("port"), trouble.why());
      assertEquals(BEFORE, settings());
    }
  }

  @Test
  void whereReadingsComeOverNoPortThatIsToldWithWhatToDo() throws Exception {
    for (String kind : List.of("typed", "simulator")) {
      EventFolder event =
          folder(
              "format = 1\nstation = \"North gate\"\nprofile = \"plain-decimal.toml\"\n"
                  + "instrument = \""
                  + kind
                  + "\"\n");
      Trouble trouble =
          assertThrows(StationException.class, () -> InstrumentPort.of(event)).trouble();
      assertEquals("NO-PORT", trouble.code());
      assertTrue(trouble.remedy().contains("instrument = \"serial\""), trouble.remedy());
    }
  }

  @Test
  void whileTheLineOfTheEventIsOpenItsPortStays() throws Exception {
    EventFolder event = PracticeEvent.make(here.resolve("event"));
    Path settings = event.path().resolve("station.toml");
    Files.writeString(
        settings,
        Files.readString(settings).replace("\"simulator\"", "\"serial\"\nport = \"COM3\""));
    String before = Files.readString(settings);
    InstrumentPort port = InstrumentPort.of(event);
    SetClock clock = new SetClock();
    try (Book open = Book.open(event, clock, clock::nanos)) {
      assertEquals("LEDGER-IN-USE", refused(port, "COM4").code());
      assertEquals(before, Files.readString(settings));
      assertTrue(open.head().sequence() > 0);
    }
    port.change("COM4");
    assertEquals("COM4", InstrumentPort.of(event).now());
  }
}
