package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.stage.Stage;
import javafx.stage.Window;
import lanewarden.audit.slip.Slips;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.station.EventFolder;
import lanewarden.station.SignedPapers;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Surroundings;
import lanewarden.station.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The front door: it blocks while the window is open, and says plainly where none can be. */
class KioskTest {
  @TempDir Path temp;

  @Test
  void returnsWhenTheOfficialsWindowIsClosedAndLeavesTheStationOpen() throws Exception {
    Booth.startToolkit();
    EventFolder folder = BoothEvent.event(temp.resolve("event"));
    SimulatedInstrument instrument = new SimulatedInstrument(folder.profile(), Clock.systemUTC());
    try (Station station = Booth.open(folder, instrument)) {
      CompletableFuture<Void> shown =
          CompletableFuture.runAsync(
              () -> {
                try {
                  new Kiosk(
                          new Makers(
                              Booth.REPORTS,
                              SlipMaker.of(new Slips(Clock.systemUTC(), SignedPapers::of)),
                              Printing.onSystem(),
                              BoothEvent.CHECK_UP),
                          new Surroundings(
                              Clock.systemUTC(),
                              System::nanoTime,
                              new SecureRandom(),
                              "Lanewarden test"),
                          new UserFolder(temp.resolve("user")))
                      .show(() -> station, folder, Optional.empty(), false);
                } catch (NoDisplayException | StationException e) {
                  throw new IllegalStateException(e);
                }
              });
      Stage window = await("TRAINING: Lanewarden: check-in line");
      assertFalse(shown.isDone());
      Booth.call(
          () -> {
            window.hide();
            return true;
          });

      shown.get(20, TimeUnit.SECONDS);
      assertEquals("Hollow Oak Open", station.view().event());
    }
  }

  private static Stage await(String title) throws Exception {
    while (true) {
      Optional<Stage> found =
          Booth.call(
              () ->
                  Window.getWindows().stream()
                      .filter(w -> w instanceof Stage s && title.equals(s.getTitle()))
                      .map(w -> (Stage) w)
                      .findFirst());
      if (found.isPresent()) {
        return found.get();
      }
      Thread.sleep(20);
    }
  }

  /** Runs in a process of its own, because a toolkit starts once a process. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void withoutADisplayOneExceptionSaysSoAndNothingElseIsPrinted() throws Exception {
    Path out = temp.resolve("out");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    if (Runtime.version().feature() >= 22) {
      command.add("--enable-native-access=ALL-UNNAMED");
    }
    command.addAll(
        List.of(
            "-Djava.awt.headless=true",
            "-cp",
            System.getProperty("java.class.path"),
            NoDisplayProbe.class.getName()));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
    Process process =
        builder
            .redirectErrorStream(true)
            .redirectOutput(new File(out.toString()))
            .directory(temp.toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "a thread kept the process up");

    List<String> lines = Files.readAllLines(out);
    assertEquals(1, lines.size(), String.join("\n", lines));
    assertTrue(lines.get(0).startsWith("no display: "), lines.get(0));
  }
}
