package lanewarden.command;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import lanewarden.audit.seal.Seal;
import lanewarden.station.EventFolder;
import lanewarden.station.KeyOffice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the key that seals an event's reports. */
@Command(
    description = {
      "Make the key that seals an event's reports; the organizer signs whose it is.",
      "A new event has one already. This is for an event that an older version made, or where the"
          + " key was lost. No station may have the event open."
    })
final class SealKeyCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Mixin private OrganizerOptions organizer = new OrganizerOptions();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  SealKeyCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    EventFolder event = new EventFolder(folder);
    char[] passphrase = organizer.passphrase(event, terminal);
    char[] again = passphrase.clone();
    Path made;
    String fingerprint;
    try {
      made = new KeyOffice(event, workplace.here()).makeReportSeal(organizer.key(), passphrase);
      fingerprint = Seal.open(made, again).fingerprint();
    } finally {
      Arrays.fill(again, '\0');
    }
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("key", made.toString());
      members.put("certificate", fingerprint);
      terminal.result(JsonLine.of(members));
    } else {
      terminal.result(Notice.of("key", made.toString()).line());
      terminal.result(Notice.of("certificate", fingerprint).line());
    }
    terminal.say(
        "The SHA-256 of its certificate is stated in the ledger and printed on every report.");
    return ExitCode.FINE;
  }
}
