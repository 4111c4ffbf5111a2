package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import lanewarden.station.LedgerInspection;
import org.junit.jupiter.api.Test;

class CheckUpCommandTest extends PracticeRun {

  private Typed checkUp(String... more) {
    String[] all = new String[more.length + 2];
    all[0] = "check-up";
    all[1] = event.path().toString();
    System.arraycopy(more, 0, all, 2, more.length);
    return new Typed().run(all);
  }

  @Test
  void everyPointIsALineWithItsRemedyBelow() throws Exception {
    String head = LedgerInspection.of(event.path(), java.util.List.of()).head().orElseThrow();
    Typed typed = checkUp();
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains(", head " + head + ": every signature"), typed.toString());
    assertTrue(typed.results().contains("attention organizer key: It lies in"), typed.toString());
    assertTrue(typed.results().contains("          what to do: Move it to a safe place"));
    assertTrue(
        typed.results().contains("found     0 wrong, 4 to look at, 8 good"), typed.toString());
  }

  @Test
  void somethingWrongEndsWithExitCode3() throws Exception {
    Files.writeString(event.path().resolve("roster.csv"), "9,Eve,XX\n", StandardOpenOption.APPEND);
    Typed typed = checkUp();
    assertEquals(3, typed.code(), typed.toString());
    assertTrue(typed.results().contains("wrong     roster: 5 competitors, 1"), typed.toString());
    assertTrue(typed.results().contains("          " + event.path()), "details: " + typed);
  }

  @Test
  void machinesGetOneObject() throws Exception {
    Path zip = here.resolve("bundle.zip");
    Typed typed = checkUp("--json", "--bundle", zip.toString());
    assertEquals(1, typed.lines().size(), typed.toString());
    JsonNode told = new ObjectMapper().readTree(typed.results());
    assertEquals("attention", told.get("worst").asText());
    assertEquals("clock", told.get("points").get(0).get("subject").asText());
    assertEquals("good", told.get("points").get(0).get("state").asText());
    assertEquals(zip.toString(), told.get("bundle").get("file").asText());
    assertTrue(Files.exists(zip));
  }

  @Test
  void bundleIsToldPartByPartAndNeverWrittenOverAFile() throws Exception {
    Path zip = here.resolve("bundle.zip");
    Typed typed = checkUp("--bundle", zip.toString());
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains("part      settings.txt, "), typed.toString());
    assertTrue(typed.lines().contains("bundle    " + zip), typed.toString());
    long size = Files.size(zip);
    Typed again = checkUp("--bundle", zip.toString());
    assertEquals(2, again.code(), again.toString());
    assertTrue(again.talk().contains("FILE-EXISTS"), again.toString());
    assertEquals(size, Files.size(zip));
  }

  @Test
  void folderThatIsNotThereIsRefused() {
    Typed typed = new Typed().run("check-up", here.resolve("none").toString());
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("NOT-A-FOLDER"), typed.toString());
    assertFalse(typed.results().contains("clock"));
  }
}
