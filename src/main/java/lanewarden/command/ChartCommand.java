package lanewarden.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.audit.wording.Wording;
import lanewarden.station.InstrumentChart;
import lanewarden.station.LedgerRecords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how the instrument kept its aim. */
@Command(
    description = {
      "Show in figures whether the instrument is still what it was: every shot of its"
          + " verifications, how far the station was from the reference, the running average, which"
          + " sees a slow drift sooner, and what lies outside its limits.",
      "Only reads, also beside a station that is running. Exit code 3 if the ledger is not sound."
    })
final class ChartCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      paramLabel = "LEDGER-OR-FOLDER",
      description = "A ledger file, or the folder of an event.")
  private Path ledger = Path.of("");

  @Option(
      names = "--json",
      description = "Answer with JSON, an object a line; its differences are in m/s.")
  private boolean json;

  ChartCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    LedgerRecords found = LedgerRecords.of(ledger);
    Optional<InstrumentChart> chart = found.chart();
    chart.map(ChartNarration::of).orElse(List.of()).stream()
        .map(told -> json ? told.json() : told.line())
        .forEach(terminal::result);
    if (chart.isEmpty()) {
      terminal.say(
          "Nothing can be compared yet: it takes two shots of a verification with their reference,"
              + " not broken off. The ledger has "
              + verifications(found.verifications().size())
              + ".");
    }
    if (!found.sound()) {
      terminal.say("The ledger is not sound, so this is not proved: verify lists its faults.");
      return ExitCode.PROOF;
    }
    return ExitCode.FINE;
  }

  private static String verifications(int count) {
    return count == 0 ? "no verification" : Wording.count(count, "verification");
  }
}
