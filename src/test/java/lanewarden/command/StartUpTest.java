package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a menu or an icon starts it. */
class StartUpTest {
  @TempDir Path here;
  private final List<Optional<Path>> shown = new ArrayList<>();

  private Typed started(String... arguments) {
    return new Typed().showingFirst((line, event) -> shown.add(event)).run(arguments);
  }

  @Test
  void withoutArgumentsTheStartScreenOpens() {
    Typed typed = started();
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(List.of(Optional.empty()), shown);
    assertEquals("", typed.results() + typed.talk());
  }

  @Test
  void aFolderDroppedOnTheIconIsOpened() throws Exception {
    Path event = Files.createDirectory(here.resolve("my event"));
    assertEquals(0, started(event.toString()).code());
    assertEquals(List.of(Optional.of(event)), shown);
  }

  @Test
  void aWordThatIsNoFolderIsAMistypedCommand() {
    Typed typed = started("my-event-that-is-not-there");
    assertEquals(2, typed.code(), typed.toString());
    assertEquals(List.of(), shown);
  }

  @Test
  void withoutADisplayItPrintsTheUsageAndOneLineThatSaysWhy() {
    Typed typed = new Typed().run();
    assertEquals(4, typed.code(), typed.toString());
    assertEquals("", typed.results());
    assertTrue(typed.talk().startsWith("Usage: lanewarden"), typed.toString());
    String last = typed.talk().strip().lines().reduce((a, b) -> b).orElseThrow();
    assertTrue(
        last.startsWith("No display can be opened here (there is none in a test)."),
        typed.toString());
  }

  @Test
  void withoutADisplayAFolderLeadsToItsLineInTheTerminal() {
    Typed typed = new Typed().run(here.toString());
    assertEquals(4, typed.code(), typed.toString());
    assertEquals(1, typed.talk().strip().lines().count(), typed.toString());
    assertTrue(typed.talk().contains("line " + here), typed.toString());
  }
}
