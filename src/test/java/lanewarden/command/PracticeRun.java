package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Verification;
import lanewarden.station.CheckInLine;
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

  /** A line of an event that is open in another program, which is closed by the test. */
  static CheckInLine open(EventFolder event) throws Exception {
    return CheckInLine.open(event, Optional.empty(), 0, PracticeEvent.here());
  }

  /** Flips one bit in the signed bytes of an entry, from 0, in every copy that the file has. */
  void flip(int number) throws Exception {
    List<byte[]> signed = new ArrayList<>();
    Verification.of(event.ledger(), List.of(), examined -> signed.add(examined.entry().jws()));
    String entry = new String(signed.get(number), StandardCharsets.ISO_8859_1);
    String piece = entry.substring(entry.length() / 2, entry.length() / 2 + 40);
    String file = new String(Files.readAllBytes(event.ledger()), StandardCharsets.ISO_8859_1);
    assertTrue(file.contains(piece), "the entry stands in the file");
    String flipped = (char) (piece.charAt(0) ^ 1) + piece.substring(1);
    Files.write(event.ledger(), file.replace(piece, flipped).getBytes(StandardCharsets.ISO_8859_1));
  }
}
