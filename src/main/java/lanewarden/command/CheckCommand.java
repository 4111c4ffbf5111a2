package lanewarden.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lanewarden.station.CheckRecords;
import lanewarden.station.LedgerRecords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows checks with their raw readings. */
@Command(
    description = {
      "Show a check as a judge looks into it: its rule, every shot with the bytes as they came over"
          + " the wire, what was refused while it ran, voids and doubts with their reasons, who"
          + " signed, the protests and corrections of it, and which check counts.",
      "Only reads, also beside a station that is running. Exit code 3 if the ledger is not sound."
    })
final class CheckCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      index = "0",
      paramLabel = "LEDGER-OR-FOLDER",
      description = "A ledger file, or the folder of an event.")
  private Path ledger = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "CHECK",
      description =
          "A bib, or a name or a part of it, whose checks are all shown, the newest first; or the"
              + " number of a check; where a bib is the same, write \"check 16\".")
  private String check = "";

  @Option(names = "--json", description = "Answer with JSON, an object a line.")
  private boolean json;

  CheckCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    LedgerRecords found = LedgerRecords.of(ledger);
    CheckRecords records = found.checks();
    List<Long> meant = found.meant(check);
    Terminal terminal = workplace.terminal();
    meant.forEach(number -> tell(records, number, terminal));
    if (!found.sound()) {
      if (meant.isEmpty()) {
        terminal.say("No such check was found in what can be understood of the ledger.");
      }
      terminal.say("The ledger is not sound, so this is not proved: verify lists its faults.");
      return ExitCode.PROOF;
    }
    return ExitCode.FINE;
  }

  private void tell(CheckRecords records, long number, Terminal terminal) {
    if (records.hasRule(number)) {
      records.of(number).map(CheckNarration::of).orElseThrow().stream()
          .map(told -> json ? told.json() : told.line())
          .forEach(terminal::result);
    } else {
      terminal.say(
          "Check "
              + number
              + " is not shown: the ledger does not hold the rule that it was opened under. The"
              + " report lists its entries.");
    }
  }
}
