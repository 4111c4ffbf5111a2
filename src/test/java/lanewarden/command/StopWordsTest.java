package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The words with which an official stops the line for safety and says that it is clear again. */
class StopWordsTest extends PracticeRun {
  private List<String> beginning(Typed typed, String word) {
    return typed.lines().stream().filter(l -> l.startsWith(word)).toList();
  }

  @Test
  void theLineIsStoppedAndClearedAndTheCheckStays() throws Exception {
    Files.writeString(event.path().resolve("rehearsal.capture"), "@ 3\n0 x\\r\\n\n");
    String[] said = {"3", "stop", "stop somebody is forward", "typed 57.0", "2", "clear", "clear"};
    Typed typed = line(said);
    List<String> stopped = beginning(typed, "STOPPED");
    assertEquals(2, stopped.size(), typed.toString());
    assertTrue(stopped.get(0).contains("LINE NOT CLEAR. Let down, no arrow on the string."));
    assertTrue(stopped.get(1).contains("LINE NOT CLEAR: somebody is forward. Let down"));
    assertEquals(1, beginning(typed, "clear").size(), typed.toString());
    assertEquals(2, typed.talk().split("LINE-NOT-CLEAR", -1).length - 1, typed.talk());
    assertTrue(typed.talk().contains("NOT-STOPPED"), typed.talk());
    assertEquals(0, beginning(typed, "reading").size(), typed.toString());
    Typed after = line("typed 57.0");
    assertTrue(beginning(after, "outcome").get(0).contains("WITHIN"), after.toString());
  }

  @Test
  void aStopIsToldToWhoComesNext() throws Exception {
    Files.writeString(event.path().resolve("rehearsal.capture"), "@ nobody\n0 x\\r\\n\n");
    line("stop lane not clear");
    assertTrue(beginning(line("status"), "STOPPED").get(0).contains("lane not clear"));
  }
}
