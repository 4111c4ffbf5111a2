package lanewarden.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What the tests of commands begin with: a fresh event and its passphrase in a file. */
abstract class PracticeRun {
  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  EventFolder event;
  Path passphrase;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void copyEvent() throws Exception {
    event = PracticeEvent.copy(made, here.resolve("event"));
    passphrase = Files.writeString(here.resolve("passphrase"), PracticeEvent.PASSPHRASE + "\n");
  }

  /** Runs the line on typed lines, with arrows that take no time. */
  Typed line(String... typed) {
    return new Typed().typing(typed).run(lineCommand());
  }

  /** The command that does so. */
  String[] lineCommand(String... more) {
    List<String> command =
        new ArrayList<>(
            List.of(
                "line",
                event.path().toString(),
                "--official",
                PracticeEvent.OFFICIAL,
                "--passphrase-file",
                passphrase.toString(),
                "--pace",
                "0"));
    command.addAll(List.of(more));
    return command.toArray(String[]::new);
  }
}
