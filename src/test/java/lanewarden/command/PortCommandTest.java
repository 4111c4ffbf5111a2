package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The port in an event's settings, told and changed from the command line. */
class PortCommandTest extends PracticeRun {
  private Path settings;

  @BeforeEach
  void namePort() throws Exception {
    settings = event.path().resolve("station.toml");
    Files.writeString(
        settings,
        Files.readString(settings).replace("\"simulator\"", "\"serial\" # left\nport = \"COM3\""));
  }

  @Test
  void tellsThePortAndChangesNothing() throws Exception {
    String before = Files.readString(settings);
    Typed typed = new Typed().run("port", event.path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertEquals("port     COM3", typed.lines().get(0));
    assertTrue(typed.lines().get(1).startsWith("here     "), typed.toString());
    assertEquals(before, Files.readString(settings));
  }

  @Test
  void writesAnotherPortAndKeepsEverythingElse() throws Exception {
    String before = Files.readString(settings);
    Typed typed = new Typed().run("port", event.path().toString(), "COM4", "--json");
    assertEquals(0, typed.code(), typed.toString());
    assertEquals("COM4", new ObjectMapper().readTree(typed.results()).get("port").asText());
    assertEquals(before.replace("COM3", "COM4"), Files.readString(settings));
  }

  @Test
  void whoOnlyAsksIsToldThePortsHereThoughTheEventHasNone() throws Exception {
    Files.writeString(
        settings,
        Files.readString(settings).replace("\"serial\" # left\nport = \"COM3\"", "\"simulator\""));
    Typed typed = new Typed().run("port", event.path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        "port     none: The readings of this event come from the simulator.", typed.lines().get(0));
    assertTrue(typed.lines().get(1).startsWith("here     "), typed.toString());
    Typed json = new Typed().run("port", event.path().toString(), "--json");
    assertTrue(new ObjectMapper().readTree(json.results()).has("here"), json.toString());
  }

  @Test
  void anEventWithoutAPortIsToldWhatToDo() throws Exception {
    Files.writeString(
        settings,
        Files.readString(settings).replace("\"serial\" # left\nport = \"COM3\"", "\"typed\""));
    Typed typed = new Typed().run("port", event.path().toString(), "COM4");
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("NO-PORT"), typed.toString());
  }
}
