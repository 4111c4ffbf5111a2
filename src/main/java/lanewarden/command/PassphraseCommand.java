package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.EventFolder;
import lanewarden.station.KeyOffice;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes the passphrase of a key. */
@Command(
    description = {
      "Change the passphrase of an official's or the organizer's key. The key stays the same.",
      "A copy of the old key file still opens with the old passphrase: if somebody may have one,"
          + " let the organizer replace the key (command official). A station may be running."
    })
final class PassphraseCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @ArgGroup(exclusive = true, multiplicity = "1")
  private Owner owner = new Owner();

  /** Whose key it is. */
  static final class Owner {
    @Option(names = "--official", paramLabel = "NAME", description = "Whose key it is.")
    private Optional<String> official = Optional.empty();

    @Option(names = "--organizer", description = "It is the organizer's key.")
    private boolean organizer;
  }

  @Option(
      names = "--organizer-key",
      paramLabel = "FILE",
      description = "Where the organizer's key is (default: keys/organizer.key in the folder).")
  private Optional<Path> key = Optional.empty();

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description =
          "Read the passphrase as it is now from the first line of a file or of a descriptor, such"
              + " as /dev/fd/3, instead of asking for it unseen.")
  private Optional<Path> passphraseFile = Optional.empty();

  @Option(
      names = "--new-passphrase-file",
      paramLabel = "FILE",
      description = "Read the new one from a file with a line \"NAME: PASSPHRASE\".")
  private Optional<Path> newPassphraseFile = Optional.empty();

  PassphraseCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    KeyOffice office = new KeyOffice(new EventFolder(folder), workplace.here());
    Passphrases passphrases = new Passphrases(workplace.terminal());
    String name = owner.organizer ? "the organizer" : owner.official.orElseThrow();
    char[] now = passphrases.of(name, passphraseFile);
    char[] fresh = passphrases.fresh(name, newPassphraseFile);
    if (owner.organizer) {
      office.changeOrganizers(key, now, fresh);
    } else {
      office.changePassphrase(name, now, fresh);
    }
    workplace.terminal().result(Notice.of("changed", "the passphrase of " + name).line());
    return ExitCode.FINE;
  }
}
