package lanewarden.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.station.EventFolder;
import lanewarden.station.StationException;
import picocli.CommandLine.Option;

/** Which official signs, and where the passphrase comes from: the options of several commands. */
final class Signer {

  @Option(
      names = "--official",
      paramLabel = "NAME",
      description = "Who signs; needed where there are several officials.")
  private Optional<String> official = Optional.empty();

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description =
          "Read the official's passphrase from the first line of a file or of a descriptor, such as"
              + " /dev/fd/3, instead of asking for it unseen.")
  private Optional<Path> passphraseFile = Optional.empty();

  /**
   * An official who signs.
   *
   * @param name of the official
   * @param passphrase as it was given
   */
  @SuppressWarnings("ArrayRecordComponent") // two are never compared
  record Signature(String name, char[] passphrase) {}

  /** The official and the passphrase, asked for where no file holds it, unless a line is open. */
  Signature signature(EventFolder event, Terminal terminal)
      throws StationException, CommandRefused, IOException {
    event.requireUnused();
    String name = name(event);
    return new Signature(name, new Passphrases(terminal).of(name, passphraseFile));
  }

  private String name(EventFolder event) throws StationException, CommandRefused {
    if (official.isPresent()) {
      return official.get();
    }
    List<String> all = event.officials();
    if (all.size() != 1) {
      throw CommandRefused.misstep(
          "WHICH-OFFICIAL",
          "Nothing was begun.",
          "It is not clear who signs. The officials are " + String.join(", ", all) + ".",
          "Say who with --official NAME.");
    }
    return all.get(0);
  }
}
