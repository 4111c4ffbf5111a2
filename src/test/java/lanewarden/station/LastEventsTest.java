package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of the events opened last, which may be missing or broken. */
class LastEventsTest {
  @TempDir Path here;
  private UserFolder user = new UserFolder(Path.of(""));
  private Path file = Path.of("");

  @BeforeEach
  void place() {
    user = new UserFolder(here.resolve("user"));
    file = user.path().resolve("last-events.txt");
  }

  private List<Path> folders() {
    return user.lastEvents().read().events().stream().map(LastEvents.Event::folder).toList();
  }

  @Test
  void aListThatIsNotThereIsEmptyWithoutTrouble() {
    assertEquals(List.of(), folders());
    assertTrue(user.lastEvents().read().trouble().isEmpty());
  }

  @Test
  void theLastOneOpenedStandsFirstAndEachOnce() throws Exception {
    Path one = here.resolve("one");
    Path two = here.resolve("two");
    for (Path folder : List.of(one, two, one)) {
      user.lastEvents().add(folder);
    }
    assertEquals(List.of(one, two), folders());
    try (Stream<Path> left = Files.list(user.path())) {
      assertEquals(List.of(file), left.toList(), "no draft of the list is left");
    }
  }

  @Test
  void onlyTheLastNineAreKept() throws Exception {
    for (int i = 0; i < 12; i++) {
      user.lastEvents().add(here.resolve("event-" + i));
    }
    assertEquals(9, folders().size());
    assertEquals(here.resolve("event-11"), folders().get(0));
  }

  @Test
  void anEventThatWasMovedIsToldApart() throws Exception {
    user.lastEvents().add(here.resolve("gone"));
    user.lastEvents().add(PracticeEvent.make(here.resolve("event")).path());
    assertEquals(
        List.of(true, false),
        user.lastEvents().read().events().stream().map(LastEvents.Event::here).toList());
  }

  @Test
  void brokenLinesAreLeftOutAndTold() throws Exception {
    Files.createDirectories(user.path());
    Path good = here.resolve("good");
    Files.writeString(file, "not the whole way\n" + good + "\na\0b\n");
    LastEvents.Read read = user.lastEvents().read();
    assertEquals(List.of(good), read.events().stream().map(LastEvents.Event::folder).toList());
    assertEquals("LAST-EVENTS", read.trouble().orElseThrow().code());
  }

  @Test
  void aFileThatIsNoTextIsAnEmptyListThatBeginsAnew() throws Exception {
    Files.createDirectories(user.path());
    Files.write(file, "\u00e4".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals("LAST-EVENTS", user.lastEvents().read().trouble().orElseThrow().code());
    user.lastEvents().add(here.resolve("one"));
    assertEquals(List.of(here.resolve("one")), folders());
    assertTrue(user.lastEvents().read().trouble().isEmpty());
  }

  @Test
  void whereNothingCanBeWrittenTheListStaysAsItWas() throws Exception {
    Files.writeString(user.path(), "a file where the folder would be");
    StationException refused =
        assertThrows(StationException.class, () -> user.lastEvents().add(here.resolve("one")));
    assertFalse(refused.trouble().remedy().isBlank());
    assertEquals("a file where the folder would be", Files.readString(user.path()));
  }

  /**
   * Places as the XDG Base Directory Specification 0.8 and the systems' makers say (from memory).
   */
  @Test
  void eachSystemHasItsOwnPlace() {
    Path home = Path.of("/home/ada");
    assertEquals(home.resolve(".config/lanewarden"), UserFolder.of("Linux", home, Map.of()).path());
    assertEquals(
        Path.of("/else/lanewarden"),
        UserFolder.of("Linux", home, Map.of("XDG_CONFIG_HOME", "/else")).path());
    assertEquals(
        home.resolve(".config/lanewarden"),
        UserFolder.of("Linux", home, Map.of("XDG_CONFIG_HOME", "not/absolute")).path());
    assertEquals(
        home.resolve("Library/Application Support/lanewarden"),
        UserFolder.of("Mac OS X", home, Map.of()).path());
    assertEquals(
        Path.of("/roaming/lanewarden"),
        UserFolder.of("Windows 11", home, Map.of("APPDATA", "/roaming")).path());
  }
}
