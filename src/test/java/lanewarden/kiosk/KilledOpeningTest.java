package lanewarden.kiosk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lanewarden.station.LedgerInspection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The kiosk told to end (SIGTERM) while it opens: at whatever moment, it says nothing of it. */
@DisabledOnOs(OS.WINDOWS)
class KilledOpeningTest {
  @TempDir Path temp;

  /** The moments lie between the start of the machine and the first frame, on most machines. */
  @ParameterizedTest
  @ValueSource(ints = {300, 600, 800, 1000, 1200, 1500, 2000})
  void saysNothingAndLeavesTheEventWhole(int millis) throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    Path said = temp.resolve("said");
    Process kiosk = started(said, "lanewarden.Main", "kiosk", event.toString());
    try {
      Thread.sleep(Duration.ofMillis(millis).toMillis());
      kiosk.destroy();
      assertTrue(kiosk.waitFor(30, TimeUnit.SECONDS), "it ends");
    } finally {
      kiosk.destroyForcibly();
    }
    assertEquals("", Files.readString(said, UTF_8));
    // 128 and the number of the signal, as POSIX shells tell it
    assertEquals(143, kiosk.exitValue());
    assertTrue(LedgerInspection.of(event, List.of()).sound());
  }

  @Test
  void theToolkitThatIsStartedTooLateIsNoWantOfADisplay() throws Exception {
    Path said = temp.resolve("said");
    Process probe = started(said, "lanewarden.kiosk.EndingProbe");
    assertTrue(probe.waitFor(30, TimeUnit.SECONDS), "it ends");
    assertEquals("not started any more", Files.readString(said, UTF_8).strip());
  }

  private Process started(Path said, String... command) throws IOException {
    List<String> whole =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dprism.order=sw",
                "-Duser.home=" + temp,
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path"))));
    whole.addAll(List.of(command));
    ProcessBuilder builder =
        new ProcessBuilder(whole).redirectErrorStream(true).redirectOutput(said.toFile());
    // Its log goes to a home of its own, not to the developer's
    builder.environment().keySet().removeAll(List.of("XDG_CONFIG_HOME", "APPDATA"));
    return builder.start();
  }
}
