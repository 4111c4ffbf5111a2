package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.station.ClausesEvent;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Runs of the program on an event whose rule book asks for much. */
abstract class ClausesRun {
  @TempDir Path here;
  EventFolder event;
  Path passphrase;

  @BeforeEach
  void copyTheEvent() throws Exception {
    event = ClausesEvent.copy(here.resolve("event"));
    passphrase = Files.writeString(here.resolve("passphrase"), PracticeEvent.PASSPHRASE + "\n");
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 11\n500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n"
            + "@ 81\n500 $PLWT,00355,0341.0,F,005865,A*11\\r\\n\n"
            + "@ 31\n500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n");
  }

  Typed line(String... typed) {
    return new Typed()
        .typing(typed)
        .secretly(PracticeEvent.PASSPHRASE)
        .run(signed("line", "--pace", "0").toArray(String[]::new));
  }

  List<String> signed(String command, String... more) {
    List<String> arguments = new ArrayList<>(List.of(command, event.path().toString()));
    arguments.addAll(List.of(more));
    arguments.addAll(
        List.of("--official", PracticeEvent.OFFICIAL, "--passphrase-file", passphrase.toString()));
    return arguments;
  }

  static void assertSays(Typed typed, String... expected) {
    for (String line : expected) {
      assertTrue(typed.lines().stream().anyMatch(l -> l.startsWith(line)), line + "\n" + typed);
    }
  }

  void changeTheRules() throws Exception {
    Path file = event.path().resolve("rule-book.toml");
    Files.writeString(file, Files.readString(file).replace("edition = \"1\"", "edition = \"2\""));
  }

  Typed script(String... typed) {
    return new Typed().typing(typed).run(signed("line", "--pace", "0").toArray(String[]::new));
  }
}
