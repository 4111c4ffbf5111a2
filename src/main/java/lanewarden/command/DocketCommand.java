package lanewarden.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lanewarden.station.LedgerInspection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists protests and corrections. */
@Command(
    description = {
      "List every protest with its ruling and every correction, ruled and confirmed or not.",
      "Only reads, also beside a station that is running. Exit code 3 if the ledger is not sound."
    })
final class DocketCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      paramLabel = "LEDGER-OR-FOLDER",
      description = "A ledger file, or the folder of an event.")
  private Path ledger = Path.of("");

  @Option(names = "--json", description = "Answer with JSON, an object a line.")
  private boolean json;

  DocketCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    LedgerInspection found = LedgerInspection.of(ledger, List.of());
    List<Notice> all = DocketNarration.all(found.docket());
    all.forEach(told -> terminal.result(json ? told.json() : told.line()));
    if (all.isEmpty()) {
      terminal.say("There is no protest and no correction.");
    }
    if (!found.sound()) {
      terminal.say("The ledger is not sound, so this is not proved: verify lists its faults.");
      return ExitCode.PROOF;
    }
    return ExitCode.FINE;
  }
}
