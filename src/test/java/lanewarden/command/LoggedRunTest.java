package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.station.ProgramLog;
import lanewarden.station.Trouble;
import lanewarden.station.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run of the program leaves in its log. */
class LoggedRunTest {
  @TempDir Path home;

  private ProgramLog open() {
    return ProgramLog.open(new UserFolder(home.resolve("own")), home);
  }

  private List<String> lines() throws Exception {
    try (Stream<Path> files = Files.walk(home)) {
      return Files.readAllLines(
          files.filter(f -> f.toString().endsWith(".log")).findAny().orElseThrow());
    }
  }

  @Test
  void everyRunNotesWhatItWasStartedForAndHowItEnded() throws Exception {
    try (ProgramLog log = open()) {
      new Typed().logging(log).run("verify", home.resolve("Ada Holt").toString());
      new Typed().logging(log).run("Ada-Holt");
    }
    List<String> lines = lines();
    assertEquals(4, lines.size(), lines.toString());
    assertTrue(lines.get(0).contains("begins: Lanewarden under test, verify, Java"));
    assertTrue(lines.get(1).endsWith("ends with exit code 2"), lines.get(1));
    assertTrue(lines.get(2).contains("begins: Lanewarden under test, no command, Java"));
    assertFalse(lines.toString().contains("Holt"), lines.toString());
  }

  @Test
  void faultOfTheProgramIsNotedWithItsCode() throws Exception {
    try (ProgramLog log = open()) {
      Typed typed =
          new Typed()
              .logging(log)
              .showingFirst(
                  (line, event) -> {
                    throw new IllegalStateException("Ada Holt");
                  })
              .run();
      assertEquals(1, typed.code());
    }
    List<String> lines = lines();
    assertTrue(lines.get(1).contains("SEVERE lanewarden BUG-IllegalStateException"), lines.get(1));
    assertTrue(lines.get(2).endsWith("ends with exit code 1"), lines.get(2));
    assertFalse(lines.toString().contains("Holt"), lines.toString());
  }

  @Test
  void logThatCannotBeWrittenIsToldOnceAndTheCommandRuns() throws Exception {
    Files.writeString(home.resolve("own"), "a file in place of the folder");
    try (ProgramLog log = open()) {
      Typed typed = new Typed().logging(log).run("--version");
      assertEquals(0, typed.code());
      assertEquals("Lanewarden under test", typed.results().strip());
      assertEquals(1, typed.talk().split("LOG-UNWRITTEN", -1).length - 1, typed.talk());
      assertEquals("", new Typed().logging(log).run("--version").talk());
    }
  }

  @Test
  void startScreenTellsItWhereNoTerminalIsSeen() throws Exception {
    Files.writeString(home.resolve("own"), "a file in place of the folder");
    try (ProgramLog log = open()) {
      Typed typed =
          new Typed()
              .logging(log)
              .showingFirst(
                  (line, event) ->
                      assertEquals(
                          Optional.of("LOG-UNWRITTEN"),
                          line.here().log().untold().map(Trouble::code)))
              .run();
      assertEquals("", typed.talk());
    }
  }
}
