package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import lanewarden.station.EventFolder;
import picocli.CommandLine.Option;

/** Where the organizer's key is, for an act that the organizer signs, and what opens it. */
final class OrganizerOptions {
  @Option(
      names = "--organizer-key",
      paramLabel = "FILE",
      description = "Where the organizer's key is (default: keys/organizer.key in the folder).")
  private Optional<Path> key = Optional.empty();

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description =
          "Read the organizer's passphrase from the first line of a file or of a descriptor, such"
              + " as /dev/fd/3, instead of asking for it unseen.")
  private Optional<Path> passphraseFile = Optional.empty();

  /** Where the key rests, or empty for its place in the event's folder. */
  Optional<Path> key() {
    return key;
  }

  /** The passphrase that opens it, unless a line is open; the caller wipes it. */
  char[] passphrase(EventFolder event, Terminal terminal) throws Exception {
    event.requireUnused();
    return new Passphrases(terminal).of("the organizer", passphraseFile);
  }
}
