package lanewarden.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.TimeStampAuthority;
import lanewarden.station.EventFolder;
import lanewarden.station.Trouble;
import picocli.CommandLine.Option;

/** Whether and with what a report is sealed. */
final class SealOptions {
  @Option(
      names = "--seal",
      description = {
        "Sign the PDF with the event's seal, so that any PDF reader finds a change of it.",
        "Needs the organizer's passphrase."
      })
  private boolean seal;

  @Option(
      names = "--seal-key",
      paramLabel = "FILE",
      description = "Where the key of the seal is (default: keys/report.seal in the folder).")
  private Optional<Path> key = Optional.empty();

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description =
          "Read the organizer's passphrase from the first line of a file or of a descriptor, such"
              + " as /dev/fd/3, instead of asking for it unseen.")
  private Optional<Path> passphraseFile = Optional.empty();

  @Option(
      names = "--time-stamp",
      paramLabel = "URL",
      description =
          "Ask this authority (RFC 3161) for a time-stamp of the seal; it is sent a hash and"
              + " nothing else (default: [time_stamp] in station.toml, if it is there).")
  private Optional<String> authority = Optional.empty();

  /**
   * The seal, if the report is to have one.
   *
   * @param event the folder of the event, or of the ledger
   */
  Optional<Seal> seal(EventFolder event, Workplace workplace) throws Exception {
    if (!seal) {
      return Optional.empty();
    }
    Path file = key.orElseGet(event::reportSeal);
    if (!Files.exists(file)) {
      throw CommandRefused.misstep(
          "SEAL-MISSING",
          "The report was not written.",
          "The key of the seal is not at " + file + ".",
          "Say where it is with --seal-key FILE. An event of an older version has none: make one"
              + " with seal-key, or write the report without --seal.");
    }
    char[] passphrase = new Passphrases(workplace.terminal()).of("the organizer", passphraseFile);
    return Optional.of(Seal.open(file, passphrase));
  }

  /** Who is asked for a time-stamp of a seal. */
  Optional<TimeStampAuthority> authority(EventFolder event, Workplace workplace) throws Exception {
    if (!seal) {
      return Optional.empty();
    }
    Optional<String> url = authority;
    if (url.isEmpty() && event.hasSettings()) {
      url = event.settings().timeStamp();
    }
    if (url.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new TimeStampAuthority(url.get(), workplace.here().random()));
    } catch (IllegalArgumentException e) {
      throw new CommandRefused(Trouble.noTimeStampAddress(String.valueOf(e.getMessage())));
    }
  }
}
