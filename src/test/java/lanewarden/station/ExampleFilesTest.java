package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The files in {@code config}, which the README tells people to copy, make an event as they are.
 */
class ExampleFilesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"gate-timer.toml", "plain-decimal.toml", "three-gate-timer.toml"})
  void examplesMakeAnEvent(String profile) throws Exception {
    EventFolder made =
        event(profile)
            .make(folder.resolve("event"), Clock.systemUTC(), System::nanoTime, new SecureRandom());
    assertTrue(made.isMade());
    assertEquals("/dev/ttyUSB0", made.settings().port());
    assertEquals(StationSettings.Kind.SERIAL, made.settings().kind());
  }

  @Test
  void settingsReadBackWhatTheyWrite() throws Exception {
    StationSettings settings =
        new StationSettings("North \"gate\"", "p.toml", StationSettings.Kind.SERIAL, "COM3");
    byte[] written = settings.toToml().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    assertEquals(settings, StationSettings.read("station.toml", written));
  }

  private static NewEvent event(String profile) throws Exception {
    Path config = Path.of("config");
    return new NewEvent(
        NewEvent.Source.of(config.resolve("rule-book.toml")),
        NewEvent.Source.of(config.resolve("roster.csv")),
        NewEvent.Source.of(config.resolve("profiles").resolve(profile)),
        "North gate",
        StationSettings.Kind.SERIAL,
        "/dev/ttyUSB0",
        PracticeEvent.person("A. Organizer"),
        List.of(PracticeEvent.person("B. Official")));
  }
}
