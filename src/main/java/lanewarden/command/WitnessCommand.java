package lanewarden.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import lanewarden.station.EventFolder;
import lanewarden.station.EventOffice;
import lanewarden.station.StationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Signs another station's printed head into the own ledger. */
@Command(
    description = {
      "Sign the head of another station's ledger, as it stands on a slip or report, into the own"
          + " ledger.",
      "From then on neither station alone can rewrite what came before: verify OTHER --witness"
          + " LEDGER holds the one against the other. Swap heads every hour, and at the end."
    })
final class WitnessCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "The own event folder.")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "STATION", description = "The other station's name.")
  private String station = "";

  @Parameters(
      index = "2",
      paramLabel = "SEQ-HASH",
      description = "The other ledger's head as printed, such as 1234-ab12cd34ef56.")
  private String head = "";

  @Mixin private Signer signer = new Signer();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  WitnessCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    EventFolder event = new EventFolder(folder);
    Signer.Signature by = signer.signature(event, terminal);
    EventOffice office = new EventOffice(event, workplace.here());
    Notice told =
        signed(
            station,
            head,
            (other, printed) -> office.witness(by.name(), by.passphrase(), other, printed));
    terminal.result(json ? told.json() : told.line());
    return ExitCode.FINE;
  }

  /** Where a head is signed. */
  @FunctionalInterface
  interface Desk {
    /** The number of the entry. */
    long sign(String station, String head) throws StationException;
  }

  /** Signs it, and says so. */
  static Notice signed(String station, String head, Desk desk) throws StationException {
    long entry = desk.sign(station, head);
    return Notice.of("witnessed", "head " + head + " of " + station + ", with entry " + entry)
        .with("station", station)
        .with("head", head)
        .with("entry", entry);
  }
}
